package org.lowfirst.app.bench;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.Reading;
import org.lowfirst.transfer.Vessel;

/** Counts gas by what gauges show, and says what gauges should show. Real gas, settled. Thread-safe. */
final class GasCount {

    /** Temperatures a bench sees are few; beyond this many the store of isotherms starts anew. */
    private static final int MOST_ISOTHERMS = 512;

    private final EquationOfState gas;
    private final Map<Temperature, Isotherm> isotherms = new ConcurrentHashMap<>();

    GasCount(EquationOfState gas) {
        this.gas = gas;
    }

    EquationOfState gas() {
        return gas;
    }

    /** Gas in a cylinder whose gauge showed this; empty when no gas computed here can have shown it. */
    Optional<Amount> findContents(Volume waterVolume, Reading reading, AbsolutePressure ambient) {
        Temperature temperature = reading.temperature().temperature();
        GaugePressure shown = reading.pressure().gauge();
        return findContents(waterVolume, shown, temperature, ambient);
    }

    /** As above, at a given temperature. */
    Optional<Amount> findContents(
            Volume waterVolume, GaugePressure shown, Temperature temperature, AbsolutePressure ambient) {
        double absolute_Pa = shown.pascals() + ambient.pascals();
        return findIsotherm(temperature)
                .filter(isotherm -> absolute_Pa >= 0.0 && absolute_Pa <= isotherm.highestPressure_Pa())
                .map(isotherm -> Vessel.at(waterVolume, new AbsolutePressure(absolute_Pa), isotherm)
                        .contents());
    }

    /** What a gauge shows on a cylinder with these contents. */
    GaugePressure shown(Volume waterVolume, Amount contents, Temperature temperature, AbsolutePressure ambient) {
        return new Vessel(waterVolume, contents).pressure(isotherm(temperature)).toGauge(ambient);
    }

    /** The same; empty when no gas is computed at that temperature, or it would stand higher than it is computed for. */
    Optional<GaugePressure> findShown(
            Volume waterVolume, Amount contents, Temperature temperature, AbsolutePressure ambient) {
        return findIsotherm(temperature)
                .map(isotherm -> new Vessel(waterVolume, contents).pressure(isotherm))
                .filter(pressure -> pressure.pascals() <= isotherm(temperature).highestPressure_Pa())
                .map(pressure -> pressure.toGauge(ambient));
    }

    /** Gas that fills a volume at the pressure of the surroundings. */
    Density atAmbient(Temperature temperature, AbsolutePressure ambient) {
        return new Density(isotherm(temperature).density_molPerM3(ambient.pascals()));
    }

    private Isotherm isotherm(Temperature temperature) {
        return findIsotherm(temperature)
                .orElseThrow(() -> new IllegalArgumentException(
                        "The temperature (" + temperature.kelvin() + " K) must be one the gas is computed for."));
    }

    private Optional<Isotherm> findIsotherm(Temperature temperature) {
        if (isotherms.size() >= MOST_ISOTHERMS) {
            isotherms.clear();
        }
        Isotherm known = isotherms.get(temperature);
        if (known == null && gas.isotherm(temperature) instanceof Evaluated.Value<Isotherm> found) {
            known = found.value();
            isotherms.put(temperature, known);
        }
        return Optional.ofNullable(known);
    }
}
