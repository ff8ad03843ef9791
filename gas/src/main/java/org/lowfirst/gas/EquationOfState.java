package org.lowfirst.gas;

/**
 * Equilibrium properties of one pure gas. Implementations are immutable and thread-safe.
 *
 * <p>Only the gas side is described; every method answers {@link Evaluated.OutOfRange} outside {@link #range()}.
 */
public interface EquationOfState {

    /** Name of the gas, lower case, e.g. "oxygen". */
    String gas();

    /** Where the equation may be used. */
    ValidRange range();

    /** Mass of an amount of this gas. */
    Mass massOf(Amount amount);

    /** Molar density at absolute pressure and temperature. */
    Evaluated<Density> density(AbsolutePressure pressure, Temperature temperature);

    /** Absolute pressure at molar density and temperature. */
    Evaluated<AbsolutePressure> pressure(Density density, Temperature temperature);

    /**
     * The relation of pressure and density at one temperature, made for many cheap evaluations.
     *
     * @param temperature the temperature of the isotherm
     */
    Evaluated<Isotherm> isotherm(Temperature temperature);

    /**
     * The same relation straight from the equation, without a table between: slower, and the oracle of
     * {@link #isotherm(Temperature)}.
     *
     * @param temperature the temperature of the isotherm
     */
    default Evaluated<Isotherm> directIsotherm(Temperature temperature) {
        return isotherm(temperature);
    }

    /**
     * Volume that an amount of this gas takes at a reference condition, real gas.
     *
     * @throws IllegalArgumentException when the condition is outside {@link #range()}
     */
    default Volume freeVolume(Amount amount, ReferenceCondition at) {
        double rho = density(at.pressure(), at.temperature()).orElseThrow().molesPerCubicMetre();
        return new Volume(amount.moles() / rho);
    }

    /**
     * Amount of this gas that takes a volume at a reference condition, real gas.
     *
     * @throws IllegalArgumentException when the condition is outside {@link #range()}
     */
    default Amount amountOf(Volume freeVolume, ReferenceCondition at) {
        return density(at.pressure(), at.temperature()).orElseThrow().amountIn(freeVolume);
    }

    /**
     * Contents of a cylinder.
     *
     * @param waterVolume its internal volume
     * @param pressure absolute pressure of the gas in it
     * @param temperature temperature of the gas in it
     */
    default Evaluated<Amount> contents(Volume waterVolume, AbsolutePressure pressure, Temperature temperature) {
        return density(pressure, temperature).map(density -> density.amountIn(waterVolume));
    }
}
