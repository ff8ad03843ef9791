package org.lowfirst.gas.internal;

import org.lowfirst.gas.ValidRange;

/**
 * A point of a gas described by a Helmholtz equation.
 *
 * <p>Symbols: c = n delta^(d-1) tau^t of one term; g = l delta^l, the same for all terms of one l, so that delta d/d(delta) of
 * a term's delta^d exp(-delta^l) is (d - g) times it. The sums of c, c d, c d^2, c t, c t d, c t^2 over the terms of one l
 * give every derivative.
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

    private double phi;
    private double phiSlope;
    private double phiTau;
    private double sumTau;
    private double sumTauTau;

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
        evaluate(0.0, range.lowest().kelvin());
    }

    @Override
    void evaluate(double rho_molPerM3, double T_K) {
        double delta = rho_molPerM3 / constants.reducingDensity_molPerM3();
        double tau = constants.reducingTemperature_K() / T_K;
        prepare(delta, tau);
        phi = 0.0;
        phiSlope = 0.0;
        phiTau = 0.0;
        sumTau = 0.0;
        sumTauTau = 0.0;
        for (int l = 0; l <= terms.highestL; l++) {
            if (terms.firstOf[l] < terms.firstOf[l + 1]) {
                add(l);
            }
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
        double power = 1.0;
        for (int k = 0; k < deltaPower.length; k++) {
            deltaPower[k] = power;
            power *= delta;
        }
    }

    /** Adds the terms of one l. */
    private void add(int l) {
        double[] n = terms.n;
        double[] d = terms.dAsDouble;
        double[] t = terms.t;
        int[] deltaIndex = terms.dBelow;
        int[] tauIndex = terms.tauPowers.indexOfTerm;
        double sum = 0.0;
        double byD = 0.0;
        double byDD = 0.0;
        double byT = 0.0;
        double byTD = 0.0;
        double byTT = 0.0;
        for (int i = terms.firstOf[l]; i < terms.firstOf[l + 1]; i++) {
            double c = n[i] * deltaPower[deltaIndex[i]] * tauPower[tauIndex[i]];
            double cd = c * d[i];
            double ct = c * t[i];
            sum += c;
            byD += cd;
            byDD += cd * d[i];
            byT += ct;
            byTD += cd * t[i];
            byTT += ct * t[i];
        }
        double g = l * deltaPower[l];
        double damping = l == 0 ? 1.0 : Math.exp(-deltaPower[l]);
        phi += damping * (byD - g * sum);
        phiSlope += damping * (byDD - (1.0 + 2.0 * g) * byD + g * (1.0 + g - l) * sum);
        phiTau += damping * (byTD - g * byT);
        sumTau += damping * byT;
        sumTauTau += damping * (byTT - byT);
    }

    @Override
    double entropy() {
        double delta = rho / constants.reducingDensity_molPerM3();
        double tau = constants.reducingTemperature_K() / t;
        prepare(delta, tau);
        double helmholtz = ideal.value(delta, tau);
        for (int l = 0; l <= terms.highestL; l++) {
            double sum = 0.0;
            for (int i = terms.firstOf[l]; i < terms.firstOf[l + 1]; i++) {
                sum += terms.n[i] * deltaPower[terms.dBelow[i]] * tauPower[terms.tauPowers.indexOfTerm[i]];
            }
            helmholtz += delta * sum * (l == 0 || sum == 0.0 ? 1.0 : Math.exp(-deltaPower[l]));
        }
        return u / t - gasConstant_JPerMolK * helmholtz;
    }

    @Override
    double density(double p_Pa, double T_K, double start) {
        curve.setTemperature(T_K);
        return curve.density(p_Pa, start);
    }
}
