package org.lowfirst.gas.internal;

import org.lowfirst.gas.ValidRange;

/**
 * A point of a gas described by a Helmholtz equation.
 *
 * <p>Symbols: a term of the residual part is b delta with b = n delta^(d-1) tau^t exp(-delta^l); D = d - l delta^l is what
 * delta d/d(delta) makes of it.
 *
 * @see "[SchmidtWagner1985], relations as in [Stewart1991] section 5"
 */
final class HelmholtzPoint extends AbstractStatePoint {

    private final EquationConstants constants;
    private final IdealTerms ideal;
    private final ResidualTerms terms;
    private final IsothermCurve curve;
    private final double[] tauPower;
    /** delta^k at k. */
    private final double[] deltaPower;
    /** exp(-delta^l) at l, 1 at 0. */
    private final double[] damping;
    /** l delta^l at l. */
    private final double[] decline;

    HelmholtzPoint(ValidRange range, EquationConstants constants, IdealTerms ideal, ResidualTerms terms) {
        super(
                range,
                constants.highestDensity_molPerM3(),
                constants.gasConstant_JPerMolK(),
                constants.molarMass_kgPerMol());
        this.constants = constants;
        this.ideal = ideal;
        this.terms = terms;
        curve = new IsothermCurve(constants, terms);
        tauPower = new double[terms.tauPowers.size()];
        deltaPower = new double[Math.max(terms.highestD, terms.highestL + 1)];
        damping = new double[terms.highestL + 1];
        decline = new double[terms.highestL + 1];
        evaluate(0.0, range.lowest().kelvin());
    }

    @Override
    void evaluate(double rho_molPerM3, double T_K) {
        double delta = rho_molPerM3 / constants.reducingDensity_molPerM3();
        double tau = constants.reducingTemperature_K() / T_K;
        prepare(delta, tau);
        double phi = 0.0;
        double phiSlope = 0.0;
        double phiTau = 0.0;
        double sumTau = 0.0;
        double sumTauTau = 0.0;
        for (int i = 0; i < terms.n.length; i++) {
            int l = terms.l[i];
            double b = terms.n[i] * deltaPower[terms.d[i] - 1] * tauPower[terms.tauPowers.indexOfTerm[i]] * damping[l];
            double bigD = terms.d[i] - decline[l];
            double bD = b * bigD;
            double bt = b * terms.t[i];
            phi += bD;
            phiSlope += bD * (bigD - 1.0) - b * l * decline[l];
            phiTau += bt * bigD;
            sumTau += bt;
            sumTauTau += bt * (terms.t[i] - 1.0);
        }
        double energy = ideal.logTau + ideal.a2 * tau + delta * sumTau;
        double curvature = -ideal.logTau + delta * sumTauTau;
        for (int i = 0; i < ideal.n.length; i++) {
            double x = ideal.theta[i] * tau;
            double boltzmann = Math.exp(-x);
            double occupied = x / (1.0 - boltzmann);
            energy += ideal.n[i] * occupied * boltzmann;
            curvature -= ideal.n[i] * occupied * occupied * boltzmann;
        }
        rho = rho_molPerM3;
        t = T_K;
        double rT = gasConstant_JPerMolK * T_K;
        z = 1.0 + delta * phi;
        p = rho_molPerM3 * rT * z;
        u = rT * energy;
        cv = -gasConstant_JPerMolK * curvature;
        dpdrho = rT * (1.0 + delta * (2.0 * phi + phiSlope));
        dpdTPerRho = gasConstant_JPerMolK * (1.0 + delta * (phi - phiTau));
        dudrho = rT * phiTau / constants.reducingDensity_molPerM3();
    }

    private void prepare(double delta, double tau) {
        terms.tauPowers.fill(tau, tauPower);
        deltaPower[0] = 1.0;
        for (int k = 1; k < deltaPower.length; k++) {
            deltaPower[k] = deltaPower[k - 1] * delta;
        }
        damping[0] = 1.0;
        for (int l = 1; l < damping.length; l++) {
            if (terms.uses(l)) {
                damping[l] = Math.exp(-deltaPower[l]);
                decline[l] = l * deltaPower[l];
            }
        }
    }

    @Override
    double entropy() {
        double delta = rho / constants.reducingDensity_molPerM3();
        double tau = constants.reducingTemperature_K() / t;
        prepare(delta, tau);
        double helmholtz = ideal.value(delta, tau);
        for (int i = 0; i < terms.n.length; i++) {
            helmholtz += terms.n[i]
                    * deltaPower[terms.d[i] - 1]
                    * delta
                    * tauPower[terms.tauPowers.indexOfTerm[i]]
                    * damping[terms.l[i]];
        }
        return u / t - gasConstant_JPerMolK * helmholtz;
    }

    @Override
    double density(double p_Pa, double T_K, double start) {
        curve.setTemperature(T_K);
        return curve.density(p_Pa, start);
    }
}
