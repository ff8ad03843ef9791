package org.lowfirst.gas.internal;

import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;

/** Pressure and density at one temperature straight from the equation. Immutable. */
final class DirectIsotherm implements Isotherm {

    private final Temperature temperature;
    private final double highest_Pa;
    private final double highest_molPerM3;
    private final double rT_JPerMol;
    private final IsothermCurve curve;

    DirectIsotherm(EquationConstants constants, ResidualTerms residual, double highest_Pa, Temperature temperature) {
        this.temperature = temperature;
        this.highest_Pa = highest_Pa;
        this.highest_molPerM3 = constants.highestDensity_molPerM3();
        this.rT_JPerMol = constants.gasConstant_JPerMolK() * temperature.kelvin();
        curve = new IsothermCurve(constants, residual);
        curve.setTemperature(temperature.kelvin());
    }

    IsothermCurve curve() {
        return curve;
    }

    double rT_JPerMol() {
        return rT_JPerMol;
    }

    @Override
    public Temperature temperature() {
        return temperature;
    }

    @Override
    public double highestPressure_Pa() {
        return highest_Pa;
    }

    @Override
    public double pressure_Pa(double rho_molPerM3) {
        if (!(rho_molPerM3 >= 0.0) || rho_molPerM3 > highest_molPerM3) {
            throw Limits.density(rho_molPerM3, highest_molPerM3);
        }
        return curve.pressure(rho_molPerM3);
    }

    @Override
    public double density_molPerM3(double p_Pa) {
        if (!(p_Pa >= 0.0) || p_Pa > highest_Pa) {
            throw Limits.pressure(p_Pa, highest_Pa);
        }
        return curve.density(p_Pa, p_Pa / rT_JPerMol);
    }
}
