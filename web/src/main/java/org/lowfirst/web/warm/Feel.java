package org.lowfirst.web.warm;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.lowfirst.gas.Temperature;

/** How a bottle feels to the hand, and how warm its wall then is: a guess for those without a thermometer (common practice, no source). */
enum Feel {
    /** As the room: no warmer than the bench. */
    ROOM(Double.NaN),
    /** As a hand. */
    HAND(35),
    /** Warmer than a hand, held easily. */
    WARM(45),
    /** Hardly to be held. */
    HOT(55);

    private final double wall_C;

    /** @param wall_C temperature of the wall [C]; not a number for that of the bench */
    Feel(double wall_C) {
        this.wall_C = wall_C;
    }

    Temperature wall(Temperature bench) {
        return Double.isNaN(wall_C) ? bench : Temperature.ofCelsius(wall_C);
    }

    /** Its text in the form and in the words files. */
    String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Feel> find(String text) {
        return Arrays.stream(values()).filter(feel -> feel.text().equals(text)).findFirst();
    }
}
