package org.lowfirst.station;

import java.util.Arrays;
import java.util.Optional;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;

/** Units found by the symbol that is written in files and in the journal. */
public final class UnitSymbols {

    private UnitSymbols() {}

    public static Optional<PressureUnit> findPressure(String symbol) {
        return Arrays.stream(PressureUnit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst();
    }

    public static Optional<TemperatureUnit> findTemperature(String symbol) {
        return Arrays.stream(TemperatureUnit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst();
    }

    public static Optional<VolumeUnit> findVolume(String symbol) {
        return Arrays.stream(VolumeUnit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst();
    }
}
