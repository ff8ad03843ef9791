package org.lowfirst.gas.internal;

import java.net.URL;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.StatePoint;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Transport;
import org.lowfirst.gas.ValidRange;

/**
 * A gas by an equation of state in the reduced Helmholtz energy, read from a substance file. Immutable.
 *
 * @see "[SchmidtWagner1985]"
 */
public final class HelmholtzEquation implements CaloricEquation {

    private final EquationConstants constants;
    private final IdealTerms ideal;
    private final ResidualTerms residual;
    private final String gas;
    private final ValidRange range;
    private final Provenance provenance;

    private final @Nullable Transport transport;

    private HelmholtzEquation(SubstanceFile file) {
        gas = file.text("gas");
        constants = EquationConstants.of(file);
        range = new ValidRange(
                new Temperature(file.quantity("lowest-temperature", "K", 1.0, 5000.0)),
                new Temperature(file.quantity("highest-temperature", "K", 1.0, 5000.0)),
                new AbsolutePressure(file.quantity("highest-pressure", "Pa", 1e5, 1e9)));
        ideal = new IdealTerms(file);
        residual = new ResidualTerms(file.table("residual"));
        provenance = Provenance.of(file);
        transport = provenance.transportSources().isEmpty()
                ? null
                : new LemmonJacobsenTransport(file, this, constants, residual);
        file.nothingElse();
    }

    /**
     * Reads a substance file.
     *
     * @throws MalformedSubstanceFile when the file does not say what it must
     */
    public static HelmholtzEquation read(URL substanceFile) {
        return new HelmholtzEquation(SubstanceReader.read(substanceFile));
    }

    @Override
    public String gas() {
        return gas;
    }

    /** Where the numbers are from. */
    public Provenance provenance() {
        return provenance;
    }

    /** Viscosity and conductivity, when the substance file gives them. */
    public Optional<Transport> findTransport() {
        return Optional.ofNullable(transport);
    }

    @Override
    public ValidRange range() {
        return range;
    }

    @Override
    public double molarMass_kgPerMol() {
        return constants.molarMass_kgPerMol();
    }

    @Override
    public StatePoint newPoint() {
        return new HelmholtzPoint(range, constants, ideal, residual);
    }

    @Override
    public Mass massOf(Amount amount) {
        return new Mass(amount.moles() * constants.molarMass_kgPerMol());
    }

    @Override
    public Evaluated<Density> density(AbsolutePressure pressure, Temperature temperature) {
        double p = pressure.pascals();
        double highest = range.highestPressure().pascals();
        if (p > highest) {
            return new Evaluated.OutOfRange<>("pressure", p, 0.0, highest, "Pa absolute");
        }
        return direct(temperature).map(line -> new Density(line.density_molPerM3(p)));
    }

    @Override
    public Evaluated<AbsolutePressure> pressure(Density density, Temperature temperature) {
        return direct(temperature).then(line -> {
            double rho = density.molesPerCubicMetre();
            if (rho <= constants.highestDensity_molPerM3()) {
                double p = line.pressure_Pa(rho);
                if (p <= line.highestPressure_Pa()) {
                    return new Evaluated.Value<>(new AbsolutePressure(p));
                }
            }
            double highest = line.density_molPerM3(line.highestPressure_Pa());
            return new Evaluated.OutOfRange<>("density", rho, 0.0, highest, "mol/m3");
        });
    }

    @Override
    public Evaluated<Isotherm> isotherm(Temperature temperature) {
        return direct(temperature).map(line -> new TabulatedIsotherm(line, constants.reducingDensity_molPerM3()));
    }

    @Override
    public Evaluated<Isotherm> directIsotherm(Temperature temperature) {
        return direct(temperature).map(line -> line);
    }

    private Evaluated<DirectIsotherm> direct(Temperature temperature) {
        if (temperature.compareTo(range.lowest()) < 0 || temperature.compareTo(range.highest()) > 0) {
            return new Evaluated.OutOfRange<>(
                    "temperature",
                    temperature.kelvin(),
                    range.lowest().kelvin(),
                    range.highest().kelvin(),
                    "K");
        }
        return new Evaluated.Value<>(
                new DirectIsotherm(constants, residual, range.highestPressure().pascals(), temperature));
    }
}
