package org.lowfirst.gas;

import org.lowfirst.gas.internal.IdealPoint;

/** The ideal gas, pV = nRT, with a constant heat capacity: for textbook problems and to show what the simple rule gets wrong. */
public final class IdealGas implements CaloricEquation {

    /** Molar gas constant 8.314 462 618 J/(mol K) (CODATA 2018, exact in the SI of 2019). */
    public static final double MOLAR_GAS_CONSTANT_J_PER_MOL_K = 8.314462618;

    private static final ValidRange RANGE =
            new ValidRange(new Temperature(50.0), new Temperature(2000.0), new AbsolutePressure(100e6));

    private final String gas;
    private final double molarMass_kgPerMol;
    private final double cv_JPerMolK;

    /**
     * A gas of two atoms a molecule: cv = 5/2 R, so cp / cv = 1.4.
     *
     * @param gas name of the gas, lower case
     * @param molarMass_kgPerMol molar mass [kg/mol], above 0
     */
    public IdealGas(String gas, double molarMass_kgPerMol) {
        this(gas, molarMass_kgPerMol, 2.5 * MOLAR_GAS_CONSTANT_J_PER_MOL_K);
    }

    /**
     * @param gas name of the gas, lower case
     * @param molarMass_kgPerMol molar mass [kg/mol], above 0
     * @param cv_JPerMolK isochoric heat capacity [J/(mol K)], above 0
     */
    public IdealGas(String gas, double molarMass_kgPerMol, double cv_JPerMolK) {
        if (!(cv_JPerMolK > 0.0)) {
            throw new IllegalArgumentException("The heat capacity (" + cv_JPerMolK + " J/(mol K)) must be above 0.");
        }
        if (!(molarMass_kgPerMol > 0.0)) {
            throw new IllegalArgumentException("The molar mass (" + molarMass_kgPerMol + " kg/mol) must be above 0.");
        }
        this.gas = gas;
        this.cv_JPerMolK = cv_JPerMolK;
        this.molarMass_kgPerMol = molarMass_kgPerMol;
    }

    @Override
    public String gas() {
        return gas;
    }

    @Override
    public ValidRange range() {
        return RANGE;
    }

    @Override
    public double molarMass_kgPerMol() {
        return molarMass_kgPerMol;
    }

    @Override
    public StatePoint newPoint() {
        return IdealPoint.of(RANGE, MOLAR_GAS_CONSTANT_J_PER_MOL_K, molarMass_kgPerMol, cv_JPerMolK);
    }

    @Override
    public Mass massOf(Amount amount) {
        return new Mass(amount.moles() * molarMass_kgPerMol);
    }

    @Override
    public Evaluated<Density> density(AbsolutePressure pressure, Temperature temperature) {
        return isotherm(temperature)
                .then(line -> pressure.pascals() <= line.highestPressure_Pa()
                        ? new Evaluated.Value<>(new Density(line.density_molPerM3(pressure.pascals())))
                        : new Evaluated.OutOfRange<>(
                                "pressure", pressure.pascals(), 0.0, line.highestPressure_Pa(), "Pa absolute"));
    }

    @Override
    public Evaluated<AbsolutePressure> pressure(Density density, Temperature temperature) {
        return isotherm(temperature).then(line -> {
            double highest = line.density_molPerM3(line.highestPressure_Pa());
            return density.molesPerCubicMetre() <= highest
                    ? new Evaluated.Value<>(new AbsolutePressure(line.pressure_Pa(density.molesPerCubicMetre())))
                    : new Evaluated.OutOfRange<>("density", density.molesPerCubicMetre(), 0.0, highest, "mol/m3");
        });
    }

    @Override
    public Evaluated<Isotherm> isotherm(Temperature temperature) {
        if (temperature.compareTo(RANGE.lowest()) < 0 || temperature.compareTo(RANGE.highest()) > 0) {
            return new Evaluated.OutOfRange<>(
                    "temperature",
                    temperature.kelvin(),
                    RANGE.lowest().kelvin(),
                    RANGE.highest().kelvin(),
                    "K");
        }
        return new Evaluated.Value<>(new Line(temperature));
    }

    private record Line(Temperature temperature) implements Isotherm {

        @Override
        public double highestPressure_Pa() {
            return RANGE.highestPressure().pascals();
        }

        @Override
        public double density_molPerM3(double p_Pa) {
            if (!(p_Pa >= 0.0) || p_Pa > highestPressure_Pa()) {
                throw new IllegalArgumentException(
                        "The pressure (" + p_Pa + " Pa) must be 0 to " + highestPressure_Pa());
            }
            return p_Pa / (MOLAR_GAS_CONSTANT_J_PER_MOL_K * temperature.kelvin());
        }

        @Override
        public double pressure_Pa(double rho_molPerM3) {
            if (!(rho_molPerM3 >= 0.0)) {
                throw new IllegalArgumentException("The density (" + rho_molPerM3 + " mol/m3) must be at least 0.");
            }
            return rho_molPerM3 * MOLAR_GAS_CONSTANT_J_PER_MOL_K * temperature.kelvin();
        }
    }
}
