package org.lowfirst.gas;

/**
 * One thermodynamic state of a gas, moved about by its owner and read many times: the numeric kernel of simulations. SI
 * doubles, no allocation. Mutable and not thread-safe: one owner, one thread. Made by {@link CaloricEquation#newPoint()}.
 *
 * <p>The moves answer false, and leave the point where it was, when the new state lies outside
 * {@link EquationOfState#range()} or an argument is NaN. A new point stands in vacuum
 * at the lowest temperature. Energies are per mole; divide by {@link CaloricEquation#molarMass_kgPerMol()} for J/kg.
 */
public interface StatePoint {

    /**
     * Moves to a density and a temperature; the cheapest move, everything below costs one evaluation.
     *
     * @param rho_molPerM3 molar density [mol/m3], at least 0 (0 is vacuum)
     * @param T_K temperature [K]
     */
    boolean moveTo(double rho_molPerM3, double T_K);

    /** Moves to a pressure [Pa, absolute] and a temperature [K]. */
    boolean moveToPressure(double p_Pa, double T_K);

    /**
     * Moves along a density to the temperature that has an internal energy.
     *
     * @param u_JPerMol internal energy [J/mol]
     * @param guess_K where to start, e.g. the temperature a moment ago; costs one to three evaluations from nearby
     */
    boolean moveToEnergy(double rho_molPerM3, double u_JPerMol, double guess_K);

    /** Moves along a density to the temperature that has an entropy [J/(mol K)]; starts from {@code guess_K}. */
    boolean moveToEntropy(double rho_molPerM3, double s_JPerMolK, double guess_K);

    /** Moves along a pressure [Pa, absolute] to the temperature that has an enthalpy [J/mol]; starts from {@code guess_K}. */
    boolean moveToPressureEnthalpy(double p_Pa, double h_JPerMol, double guess_K);

    /** Moves along a pressure [Pa, absolute] to the temperature that has an entropy [J/(mol K)]; starts from {@code guess_K}. */
    boolean moveToPressureEntropy(double p_Pa, double s_JPerMolK, double guess_K);

    /** Molar density [mol/m3]. */
    double rho_molPerM3();

    /** Temperature [K]. */
    double T_K();

    /** Absolute pressure [Pa]. */
    double p_Pa();

    /** Internal energy [J/mol]; its zero is the equation's. */
    double u_JPerMol();

    /** Enthalpy u + p/rho [J/mol]. */
    double h_JPerMol();

    /**
     * Entropy [J/(mol K)]; computed when asked for.
     *
     * @throws IllegalStateException below 1e-6 mol/m3, where it has no bound
     */
    double s_JPerMolK();

    /** Isochoric heat capacity [J/(mol K)]. */
    double cv_JPerMolK();

    /** Isobaric heat capacity [J/(mol K)]. */
    double cp_JPerMolK();

    /** Pressure by density at constant temperature [Pa m3/mol]. */
    double dpdrho_PaM3PerMol();

    /** Pressure by temperature at constant density [Pa/K]. */
    double dpdT_PaPerK();

    /** Internal energy by density at constant temperature [J m3/mol2]; 0 for the ideal gas. */
    double dudrho_JM3PerMol2();

    /** Speed of sound [m/s]. */
    double soundSpeed_mPerS();

    /** Compressibility factor Z = p / (rho R T) [1]. */
    double compressibility();
}
