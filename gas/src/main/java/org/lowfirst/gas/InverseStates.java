package org.lowfirst.gas;

import java.util.function.DoubleSupplier;

/** Finds states by an energy or an entropy, and says which limits were overstepped when there is none. */
final class InverseStates {

    private static final double START_K = 300.0;

    private final CaloricEquation equation;
    private final StatePoint point;

    InverseStates(CaloricEquation equation) {
        this.equation = equation;
        point = equation.newPoint();
    }

    Evaluated<GasState> withEnergy(Density density, double energy_JPerKg) {
        double rho = density.molesPerCubicMetre();
        double target = energy_JPerKg * equation.molarMass_kgPerMol();
        Temperature lowest = equation.range().lowest();
        return equation.pressure(density, lowest).then(any -> {
            if (point.moveToEnergy(rho, target, START_K)) {
                return GasState.at(point, equation);
            }
            point.moveTo(rho, lowest.kelvin());
            double from = point.u_JPerMol();
            point.moveTo(rho, hottest_K(rho));
            return outOfRange("internal energy", energy_JPerKg, from, point.u_JPerMol(), "J/kg");
        });
    }

    Evaluated<GasState> withEnthalpy(AbsolutePressure pressure, double enthalpy_JPerKg) {
        double p = pressure.pascals();
        double target = enthalpy_JPerKg * equation.molarMass_kgPerMol();
        return alongPressure(
                pressure,
                point.moveToPressureEnthalpy(p, target, START_K),
                "enthalpy",
                enthalpy_JPerKg,
                point::h_JPerMol,
                "J/kg");
    }

    Evaluated<GasState> withEntropy(AbsolutePressure pressure, double entropy_JPerKgK) {
        double p = pressure.pascals();
        double target = entropy_JPerKgK * equation.molarMass_kgPerMol();
        return alongPressure(
                pressure,
                point.moveToPressureEntropy(p, target, START_K),
                "entropy",
                entropy_JPerKgK,
                point::s_JPerMolK,
                "J/(kg K)");
    }

    private Evaluated<GasState> alongPressure(
            AbsolutePressure pressure,
            boolean found,
            String quantity,
            double measured,
            DoubleSupplier reading_perMol,
            String unit) {
        if (found) {
            return GasState.at(point, equation);
        }
        ValidRange range = equation.range();
        return equation.state(pressure, range.lowest()).then(any -> {
            point.moveToPressure(pressure.pascals(), range.lowest().kelvin());
            double from = reading_perMol.getAsDouble();
            point.moveToPressure(pressure.pascals(), range.highest().kelvin());
            return outOfRange(quantity, measured, from, reading_perMol.getAsDouble(), unit);
        });
    }

    private Evaluated<GasState> outOfRange(
            String quantity, double measured, double from_perMol, double to_perMol, String unit) {
        double mass = equation.molarMass_kgPerMol();
        return new Evaluated.OutOfRange<>(quantity, measured, from_perMol / mass, to_perMol / mass, unit);
    }

    /** The highest temperature that keeps this density within the highest pressure. */
    private double hottest_K(double rho) {
        double low = equation.range().lowest().kelvin();
        double high = equation.range().highest().kelvin();
        if (point.moveTo(rho, high)) {
            return high;
        }
        while (high - low > 1e-9 * high) {
            double middle = 0.5 * (low + high);
            if (point.moveTo(rho, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
