package org.lowfirst.station;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;

/** Units found by the symbol that is written in files and in the journal. */
public final class UnitSymbols {

    private static final Map<String, PressureUnit> PRESSURE =
            Arrays.stream(PressureUnit.values()).collect(Collectors.toMap(PressureUnit::symbol, unit -> unit));
    private static final Map<String, TemperatureUnit> TEMPERATURE =
            Arrays.stream(TemperatureUnit.values()).collect(Collectors.toMap(TemperatureUnit::symbol, unit -> unit));
    private static final Map<String, VolumeUnit> VOLUME =
            Arrays.stream(VolumeUnit.values()).collect(Collectors.toMap(VolumeUnit::symbol, unit -> unit));

    private UnitSymbols() {}

    public static Optional<PressureUnit> findPressure(String symbol) {
        return Optional.ofNullable(PRESSURE.get(symbol));
    }

    public static Optional<TemperatureUnit> findTemperature(String symbol) {
        return Optional.ofNullable(TEMPERATURE.get(symbol));
    }

    public static Optional<VolumeUnit> findVolume(String symbol) {
        return Optional.ofNullable(VOLUME.get(symbol));
    }
}
