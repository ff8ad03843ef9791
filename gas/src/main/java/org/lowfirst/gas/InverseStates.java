package org.lowfirst.gas;

import java.util.function.ToDoubleFunction;

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
            double mass = equation.molarMass_kgPerMol();
            return new Evaluated.OutOfRange<>(
                    "internal energy", energy_JPerKg, from / mass, point.u_JPerMol() / mass, "J/kg");
        });
    }

    Evaluated<GasState> withEnthalpy(AbsolutePressure pressure, double enthalpy_JPerKg) {
        double target = enthalpy_JPerKg * equation.molarMass_kgPerMol();
        return point.moveToPressureEnthalpy(pressure.pascals(), target, START_K)
                ? GasState.at(point, equation)
                : beyond(pressure, "enthalpy", enthalpy_JPerKg, GasState::enthalpy_JPerKg, "J/kg");
    }

    Evaluated<GasState> withEntropy(AbsolutePressure pressure, double entropy_JPerKgK) {
        double target = entropy_JPerKgK * equation.molarMass_kgPerMol();
        return point.moveToPressureEntropy(pressure.pascals(), target, START_K)
                ? GasState.at(point, equation)
                : beyond(pressure, "entropy", entropy_JPerKgK, GasState::entropy_JPerKgK, "J/(kg K)");
    }

    private Evaluated<GasState> beyond(
            AbsolutePressure pressure,
            String quantity,
            double measured,
            ToDoubleFunction<GasState> reading,
            String unit) {
        ValidRange range = equation.range();
        return equation.state(pressure, range.lowest())
                .then(coldest -> equation.state(pressure, range.highest())
                        .then(hottest -> new Evaluated.OutOfRange<>(
                                quantity,
                                measured,
                                reading.applyAsDouble(coldest),
                                reading.applyAsDouble(hottest),
                                unit)));
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
