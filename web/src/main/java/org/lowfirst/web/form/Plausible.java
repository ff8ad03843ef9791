package org.lowfirst.web.form;

import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.web.words.Words;

/**
 * Bounds beyond which a number is more likely a slip of the unit than a fact (common practice, no source). They guard typing;
 * what a cylinder may hold is decided by the rules of the bench.
 */
final class Plausible {

    /** Above the test pressure of any cylinder at such a bench. */
    private static final GaugePressure HIGHEST = GaugePressure.ofBar(500);

    private static final List<PressureUnit> LARGEST_FIRST =
            List.of(PressureUnit.BAR, PressureUnit.PSI, PressureUnit.KILOPASCAL);

    private static final Temperature COLDEST = Temperature.ofCelsius(-40);
    private static final Temperature HOTTEST = Temperature.ofCelsius(60);
    private static final Volume SMALLEST = Volume.ofLitres(0.05);
    private static final Volume LARGEST = Volume.ofLitres(200);

    /** Of a cylinder without its gas; the largest seamless ones a person can roll weigh about half of it. */
    private static final double HEAVIEST_KG = 150;

    private Plausible() {}

    /** The sentence to say when a gauge can hardly have shown {@code pressure}; nothing when it can. */
    static Optional<String> pressure(StatedPressure pressure, Words words) {
        if (pressure.gauge().compareTo(HIGHEST) <= 0) {
            return Optional.empty();
        }
        String typed = Digits.in(words.locale()).plain(pressure.value());
        return Optional.of(meant(pressure)
                .map(other -> words.of("fault.pressure.unit", typed, pressure.symbol(), other.symbol()))
                .orElseGet(() -> words.of("fault.pressure.high", typed, pressure.symbol())));
    }

    /** The largest unit in which the number would be what a gauge at a bench can show. */
    private static Optional<PressureUnit> meant(StatedPressure pressure) {
        return LARGEST_FIRST.stream()
                .filter(unit ->
                        GaugePressure.of(pressure.value().doubleValue(), unit).compareTo(HIGHEST) <= 0)
                .findFirst();
    }

    static boolean temperature(Temperature temperature) {
        return temperature.compareTo(COLDEST) >= 0 && temperature.compareTo(HOTTEST) <= 0;
    }

    static boolean emptyMass(Mass mass) {
        return mass.kilograms() > 0.0 && mass.kilograms() <= HEAVIEST_KG;
    }

    static boolean waterVolume(Volume volume) {
        return volume.compareTo(SMALLEST) >= 0 && volume.compareTo(LARGEST) <= 0;
    }
}
