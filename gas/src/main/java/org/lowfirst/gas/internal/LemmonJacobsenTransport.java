package org.lowfirst.gas.internal;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.StatePoint;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Transport;

/**
 * Viscosity and thermal conductivity in the form of Lemmon and Jacobsen. Immutable.
 *
 * <p>Valid in the range of the equation of state it goes with.
 *
 * @see "[LemmonJacobsen2004] eqs. (1) to (11), tables I to IV"
 */
final class LemmonJacobsenTransport implements Transport {

    private static final double MICRO = 1e-6;
    private static final double MILLI = 1e-3;
    private static final double GRAM = 1e-3;

    private final CaloricEquation equation;
    private final EquationConstants constants;
    private final double collisionEnergy_K;
    private final double dilute;
    private final double[] collisionIntegral;
    private final ReducedTerms viscosityResidual;
    private final double[] conductivityN;
    private final double[] conductivityT;
    private final ReducedTerms conductivityResidual;
    private final CriticalEnhancement enhancement;

    LemmonJacobsenTransport(
            SubstanceFile file, CaloricEquation equation, EquationConstants constants, ResidualTerms residual) {
        this.equation = equation;
        this.constants = constants;
        collisionEnergy_K = file.quantity("collision-energy", "K", 1.0, 2000.0);
        double sigma_nm = file.quantity("collision-diameter", "nm", 0.1, 2.0);
        dilute = file.quantity("dilute-viscosity-factor", "1", 0.0266, 0.0268)
                * Math.sqrt(constants.molarMass_kgPerMol() / GRAM)
                / (sigma_nm * sigma_nm);
        collisionIntegral = file.table("collision-integral").column("b");
        viscosityResidual = new ReducedTerms(file.table("viscosity-residual"));
        SubstanceTable diluteConductivity = file.table("conductivity-dilute");
        conductivityN = diluteConductivity.column("N");
        conductivityT = diluteConductivity.column("t");
        conductivityResidual = new ReducedTerms(file.table("conductivity-residual"));
        enhancement = new CriticalEnhancement(file, constants, residual);
    }

    /** Of the dilute gas [micro Pa s]. */
    private double diluteViscosity(double T_K) {
        double logReduced = Math.log(T_K / collisionEnergy_K);
        double logOmega = 0.0;
        for (int i = collisionIntegral.length - 1; i >= 0; i--) {
            logOmega = logOmega * logReduced + collisionIntegral[i];
        }
        return dilute * Math.sqrt(T_K) * Math.exp(-logOmega);
    }

    @Override
    public double viscosity_PaS(StatePoint point) {
        double delta = point.rho_molPerM3() / constants.reducingDensity_molPerM3();
        double logTau = Math.log(constants.reducingTemperature_K() / point.T_K());
        return MICRO * (diluteViscosity(point.T_K()) + viscosityResidual.sum(delta, logTau));
    }

    @Override
    public double conductivity_WPerMK(StatePoint point) {
        double delta = point.rho_molPerM3() / constants.reducingDensity_molPerM3();
        double logTau = Math.log(constants.reducingTemperature_K() / point.T_K());
        double diluteViscosity = diluteViscosity(point.T_K());
        double conductivity = conductivityN[0] * diluteViscosity;
        for (int i = 1; i < conductivityN.length; i++) {
            conductivity += conductivityN[i] * Math.exp(conductivityT[i] * logTau);
        }
        conductivity += conductivityResidual.sum(delta, logTau);
        double viscosity_PaS = MICRO * (diluteViscosity + viscosityResidual.sum(delta, logTau));
        return MILLI * conductivity + enhancement.conductivity_WPerMK(point, viscosity_PaS);
    }

    @Override
    public Evaluated<Values> values(AbsolutePressure pressure, Temperature temperature) {
        return equation.density(pressure, temperature).map(density -> {
            StatePoint point = equation.newPoint();
            point.moveTo(density.molesPerCubicMetre(), temperature.kelvin());
            return new Values(viscosity_PaS(point), conductivity_WPerMK(point));
        });
    }
}
