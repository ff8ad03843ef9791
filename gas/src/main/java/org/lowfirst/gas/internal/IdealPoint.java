package org.lowfirst.gas.internal;

import org.lowfirst.gas.StatePoint;
import org.lowfirst.gas.ValidRange;

/** A point of an ideal gas with a constant heat capacity. Energy is zero at 0 K, entropy at 1 mol/m3 and 1 K. */
public final class IdealPoint extends AbstractStatePoint {

    private final double heatCapacity_JPerMolK;

    private IdealPoint(ValidRange range, double gasConstant_JPerMolK, double molarMass_kgPerMol, double cv_JPerMolK) {
        super(range, Double.MAX_VALUE, gasConstant_JPerMolK, molarMass_kgPerMol);
        heatCapacity_JPerMolK = cv_JPerMolK;
        evaluate(0.0, range.lowest().kelvin());
    }

    /**
     * @param cv_JPerMolK isochoric heat capacity [J/(mol K)]
     */
    public static StatePoint of(
            ValidRange range, double gasConstant_JPerMolK, double molarMass_kgPerMol, double cv_JPerMolK) {
        return new IdealPoint(range, gasConstant_JPerMolK, molarMass_kgPerMol, cv_JPerMolK);
    }

    @Override
    void evaluate(double rho_molPerM3, double T_K) {
        rho = rho_molPerM3;
        t = T_K;
        z = 1.0;
        dpdrho = gasConstant_JPerMolK * T_K;
        dpdTPerRho = gasConstant_JPerMolK;
        p = rho_molPerM3 * dpdrho;
        u = heatCapacity_JPerMolK * T_K;
        cv = heatCapacity_JPerMolK;
        dudrho = 0.0;
    }

    @Override
    double entropy() {
        return cv * Math.log(t) - gasConstant_JPerMolK * Math.log(rho);
    }

    @Override
    double density(double p_Pa, double T_K, double start) {
        return p_Pa / (gasConstant_JPerMolK * T_K);
    }
}
