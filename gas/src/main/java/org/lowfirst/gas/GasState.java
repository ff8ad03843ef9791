package org.lowfirst.gas;

/**
 * A thermodynamic state of a gas with its caloric properties, per kilogram. Immutable. The zeros of energy, enthalpy and
 * entropy are the equation's; only differences mean something.
 */
public final class GasState {

    private final AbsolutePressure pressure;
    private final Temperature temperature;
    private final Density density;
    private final double compressibility;
    private final double energy_JPerKg;
    private final double enthalpy_JPerKg;
    private final double entropy_JPerKgK;
    private final double cv_JPerKgK;
    private final double cp_JPerKgK;
    private final double soundSpeed_mPerS;

    private GasState(StatePoint point, double molarMass_kgPerMol) {
        pressure = new AbsolutePressure(point.p_Pa());
        temperature = new Temperature(point.T_K());
        density = new Density(point.rho_molPerM3());
        compressibility = point.compressibility();
        energy_JPerKg = point.u_JPerMol() / molarMass_kgPerMol;
        enthalpy_JPerKg = point.h_JPerMol() / molarMass_kgPerMol;
        entropy_JPerKgK = point.s_JPerMolK() / molarMass_kgPerMol;
        cv_JPerKgK = point.cv_JPerMolK() / molarMass_kgPerMol;
        cp_JPerKgK = point.cp_JPerMolK() / molarMass_kgPerMol;
        soundSpeed_mPerS = point.soundSpeed_mPerS();
    }

    /** Copies a point of this equation; a density below the lowest is out of range. */
    static Evaluated<GasState> at(StatePoint point, CaloricEquation equation) {
        double rho = point.rho_molPerM3();
        if (rho < CaloricEquation.LOWEST_DENSITY_MOL_PER_M3) {
            double highest = equation.density(equation.range().highestPressure(), new Temperature(point.T_K()))
                    .orElseThrow()
                    .molesPerCubicMetre();
            return new Evaluated.OutOfRange<>(
                    "density", rho, CaloricEquation.LOWEST_DENSITY_MOL_PER_M3, highest, "mol/m3");
        }
        return new Evaluated.Value<>(new GasState(point, equation.molarMass_kgPerMol()));
    }

    public AbsolutePressure pressure() {
        return pressure;
    }

    public Temperature temperature() {
        return temperature;
    }

    public Density density() {
        return density;
    }

    /** Z = p / (rho R T) [1]. */
    public double compressibility() {
        return compressibility;
    }

    /** [J/kg]. */
    public double internalEnergy_JPerKg() {
        return energy_JPerKg;
    }

    /** [J/kg]. */
    public double enthalpy_JPerKg() {
        return enthalpy_JPerKg;
    }

    /** [J/(kg K)]. */
    public double entropy_JPerKgK() {
        return entropy_JPerKgK;
    }

    /** At constant volume [J/(kg K)]. */
    public double cv_JPerKgK() {
        return cv_JPerKgK;
    }

    /** At constant pressure [J/(kg K)]. */
    public double cp_JPerKgK() {
        return cp_JPerKgK;
    }

    /** [m/s]. */
    public double soundSpeed_mPerS() {
        return soundSpeed_mPerS;
    }
}
