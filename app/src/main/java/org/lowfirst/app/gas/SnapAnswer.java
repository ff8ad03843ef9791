package org.lowfirst.app.gas;

import java.util.List;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Pressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.warm.SnapOpening;

/** How hot gas gets in theory when a valve is snapped open into a dead end at the pressure of the surroundings. */
public final class SnapAnswer implements GasAnswer {

    private final Parsed.Read<Pressure> supply;
    private final Parsed.Read<Temperature> at;
    private final SnapOpening opening;

    SnapAnswer(Parsed.Read<Pressure> supply, Parsed.Read<Temperature> at, SnapOpening opening) {
        this.supply = supply;
        this.at = at;
        this.opening = opening;
    }

    Parsed.Read<Pressure> supply() {
        return supply;
    }

    Parsed.Read<Temperature> at() {
        return at;
    }

    SnapOpening opening() {
        return opening;
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        return List.of(
                "Open every oxygen valve slowly. Oil, grease, dust and many plastics burn in oxygen far below these"
                        + " temperatures.",
                "Both figures are theory: gas squeezed at once, without heat or loss. A real pipe loses heat; a shock"
                        + " can do worse in one spot. Neither figure says what does no harm.",
                "Local codes, the makers' instructions and licensed practice come first.");
    }
}
