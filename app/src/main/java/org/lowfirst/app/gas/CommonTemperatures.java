package org.lowfirst.app.gas;

import java.util.List;
import java.util.stream.IntStream;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Quantities;
import org.lowfirst.gas.Temperature;

/** Temperatures bottles are read at through the year, for those who ask for none. */
final class CommonTemperatures {

    private static final int COUNT = 7;

    private CommonTemperatures() {}

    /** @param unit symbol of a unit of temperature */
    static List<Parsed.Read<Temperature>> in(String unit) {
        int first = unit.equals("F") ? -20 : unit.equals("C") ? -20 : 250;
        int step = unit.equals("F") ? 20 : 10;
        return IntStream.range(0, COUNT)
                .mapToObj(place -> first + place * step + " " + unit)
                .map(text -> (Parsed.Read<Temperature>) Quantities.temperature(text))
                .toList();
    }
}
