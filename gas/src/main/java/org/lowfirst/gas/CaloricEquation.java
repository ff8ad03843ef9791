package org.lowfirst.gas;

/**
 * An equation of state that also knows energy: internal energy, enthalpy, entropy, heat capacities, speed of sound.
 * Implementations are immutable and thread-safe; the points they make are not.
 */
public interface CaloricEquation extends EquationOfState {

    /** Lowest density at which entropy is stated [mol/m3]; towards vacuum it has no bound. */
    double LOWEST_DENSITY_MOL_PER_M3 = 1e-6;

    /** Molar mass [kg/mol]. */
    double molarMass_kgPerMol();

    /** A point of this gas for a simulation to move about; not moved yet. */
    StatePoint newPoint();

    /**
     * The state at a density and a temperature.
     *
     * @param density at least {@link #LOWEST_DENSITY_MOL_PER_M3}
     */
    default Evaluated<GasState> state(Density density, Temperature temperature) {
        return pressure(density, temperature).then(pressure -> {
            StatePoint point = newPoint();
            point.moveTo(density.molesPerCubicMetre(), temperature.kelvin());
            return GasState.at(point, this);
        });
    }

    /** The state at an absolute pressure and a temperature. */
    default Evaluated<GasState> state(AbsolutePressure pressure, Temperature temperature) {
        return density(pressure, temperature).then(density -> state(density, temperature));
    }

    /**
     * The state at a density with a given internal energy.
     *
     * @param energy_JPerKg internal energy [J/kg], zero as in {@link GasState#internalEnergy_JPerKg()}
     */
    default Evaluated<GasState> stateWithEnergy(Density density, double energy_JPerKg) {
        return new InverseStates(this).withEnergy(density, energy_JPerKg);
    }

    /**
     * The state at a pressure with a given enthalpy, e.g. behind a throttle.
     *
     * @param enthalpy_JPerKg enthalpy [J/kg], zero as in {@link GasState#enthalpy_JPerKg()}
     */
    default Evaluated<GasState> stateWithEnthalpy(AbsolutePressure pressure, double enthalpy_JPerKg) {
        return new InverseStates(this).withEnthalpy(pressure, enthalpy_JPerKg);
    }

    /**
     * The state at a pressure with a given entropy, e.g. after compression without heat or loss.
     *
     * @param entropy_JPerKgK entropy [J/(kg K)], zero as in {@link GasState#entropy_JPerKgK()}
     */
    default Evaluated<GasState> stateWithEntropy(AbsolutePressure pressure, double entropy_JPerKgK) {
        return new InverseStates(this).withEntropy(pressure, entropy_JPerKgK);
    }
}
