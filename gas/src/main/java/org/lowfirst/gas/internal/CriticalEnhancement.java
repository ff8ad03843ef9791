package org.lowfirst.gas.internal;

import org.lowfirst.gas.StatePoint;

/**
 * What the neighbourhood of the critical point adds to the thermal conductivity, in the simplified form of Olchowy and
 * Sengers. Immutable.
 *
 * <p>Symbols: chi reduced susceptibility [1], xi correlation length [m], qd inverse of the cutoff length [1/m].
 *
 * @see "[OlchowySengers1989], [LemmonJacobsen2004] eqs. (7) to (11)"
 */
final class CriticalEnhancement {

    /** 1.380 649e-23 J/K (CODATA 2018, exact in the SI of 2019). */
    private static final double BOLTZMANN_J_PER_K = 1.380649e-23;

    private static final double NANOMETRE = 1e-9;

    private final double reference_K;
    private final double r0;
    private final double nuByGamma;
    private final double amplitude;
    private final double xi0_m;
    private final double cutoffInverse_perM;
    private final double criticalDensity_molPerM3;
    private final double chiScale;
    private final IsothermCurve reference;

    CriticalEnhancement(SubstanceFile file, EquationConstants constants, ResidualTerms residual) {
        reference_K = file.quantity("enhancement-reference-temperature", "K", 1.0, 5000.0);
        r0 = file.quantity("enhancement-R0", "1", 0.5, 2.0);
        nuByGamma =
                file.quantity("enhancement-nu", "1", 0.5, 0.8) / file.quantity("enhancement-exponent", "1", 1.0, 1.5);
        amplitude = file.quantity("enhancement-amplitude", "1", 1e-3, 1.0);
        xi0_m = NANOMETRE * file.quantity("enhancement-xi0", "nm", 0.01, 10.0);
        cutoffInverse_perM = 1.0 / (NANOMETRE * file.quantity("enhancement-cutoff", "nm", 0.01, 10.0));
        criticalDensity_molPerM3 = file.quantity("critical-density", "mol/m3", 100.0, 1e5);
        chiScale = file.quantity("critical-pressure", "Pa", 1e4, 1e8)
                / (criticalDensity_molPerM3 * criticalDensity_molPerM3);
        reference = new IsothermCurve(constants, residual);
        reference.setTemperature(reference_K);
    }

    /** Its part of the conductivity [W/(m K)]. */
    double conductivity_WPerMK(StatePoint point, double viscosity_PaS) {
        double rho = point.rho_molPerM3();
        double chi = chiScale
                * rho
                * (1.0 / point.dpdrho_PaM3PerMol() - reference_K / (point.T_K() * reference.pressureSlope(rho)));
        if (!(chi > 0.0)) {
            return 0.0;
        }
        double xi = xi0_m * Math.pow(chi / amplitude, nuByGamma);
        double reach = xi * cutoffInverse_perM;
        double cvByCp = point.cv_JPerMolK() / point.cp_JPerMolK();
        double omega = (1.0 - cvByCp) * Math.atan(reach) + cvByCp * reach;
        double dense = reach * criticalDensity_molPerM3 / rho;
        double omega0 = -Math.expm1(-1.0 / (1.0 / reach + dense * dense / 3.0));
        return rho
                * point.cp_JPerMolK()
                * r0
                * BOLTZMANN_J_PER_K
                * point.T_K()
                / (6.0 * Math.PI * viscosity_PaS * xi)
                * (2.0 / Math.PI)
                * (omega - omega0);
    }
}
