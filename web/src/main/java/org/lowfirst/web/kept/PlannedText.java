package org.lowfirst.web.kept;

import org.lowfirst.station.Happening;
import org.lowfirst.web.workplace.BenchNow;

/** Says what is planned. */
public final class PlannedText {

    private PlannedText() {}

    /** Name and days. */
    public static String of(BenchNow now, Happening planned) {
        return planned.days() == 1
                ? now.words().of("kept.event.day", planned.name(), now.times().day(planned.from()))
                : now.words()
                        .of(
                                "kept.event.days",
                                planned.name(),
                                now.times().day(planned.from()),
                                now.times().day(planned.until()));
    }

    /** How many fills more. */
    public static String fills(BenchNow now, Happening planned) {
        return now.words().of("kept.event.fills", now.figures().toType(planned.fills()));
    }
}
