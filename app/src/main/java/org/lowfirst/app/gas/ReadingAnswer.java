package org.lowfirst.app.gas;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.planning.warm.SameGas;

/** A reading at other temperatures, by the equation of the real gas and by the simple rule beside it. */
public final class ReadingAnswer implements GasAnswer {

    /** Up to here 100.0 % is shown. */
    private static final double SHOWN_AS_FULL = 100.05;

    private final TypedReading typed;
    private final SameGas real;
    private final SameGas ideal;

    ReadingAnswer(TypedReading typed, SameGas real, SameGas ideal) {
        this.typed = typed;
        this.real = real;
        this.ideal = ideal;
    }

    TypedReading typed() {
        return typed;
    }

    SameGas real() {
        return real;
    }

    SameGas ideal() {
        return ideal;
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        SameGas.Fullness full = real.full();
        if (full != null && full.percent() > SHOWN_AS_FULL) {
            notes.add("It holds more than its marking allows at that temperature. Fill no further, and ask the person"
                    + " responsible for the bench.");
        }
        notes.add("A gauge shows pressure above the surroundings, here " + StandardAtmosphere.PRESSURE.toBar()
                + " bar absolute (sea level).");
        notes.add("The temperature is that of the gas. Right after filling it is warmer than the room.");
        if (real.contents() != null) {
            notes.add("Free gas counts at " + typed.condition().label() + ".");
        }
        notes.add("Ideal gas is the simple rule p V = n R T, shown to tell how far off it is.");
        notes.add("The cylinder's marking, local codes and the makers' instructions come before these figures.");
        return List.copyOf(notes);
    }
}
