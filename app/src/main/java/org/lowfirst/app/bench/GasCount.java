package org.lowfirst.app.bench;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.EquationOfState;
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

    /** Gas in a cylinder whose gauge showed this. Readings of the journal are within the range of the gas. */
    Amount contents(Volume waterVolume, Reading reading, AbsolutePressure ambient) {
        return contents(
                waterVolume, reading.pressure().gauge(), reading.temperature().temperature(), ambient);
    }

    Amount contents(Volume waterVolume, GaugePressure shown, Temperature temperature, AbsolutePressure ambient) {
        return Vessel.at(waterVolume, shown.toAbsolute(ambient), isotherm(temperature))
                .contents();
    }

    /** What a gauge shows on a cylinder with these contents. */
    GaugePressure shown(Volume waterVolume, Amount contents, Temperature temperature, AbsolutePressure ambient) {
        return new Vessel(waterVolume, contents).pressure(isotherm(temperature)).toGauge(ambient);
    }

    /** Gas that fills a volume at the pressure of the surroundings. */
    Density atAmbient(Temperature temperature, AbsolutePressure ambient) {
        return new Density(isotherm(temperature).density_molPerM3(ambient.pascals()));
    }

    private Isotherm isotherm(Temperature temperature) {
        if (isotherms.size() >= MOST_ISOTHERMS) {
            isotherms.clear();
        }
        return isotherms.computeIfAbsent(temperature, t -> gas.isotherm(t).orElseThrow());
    }
}
