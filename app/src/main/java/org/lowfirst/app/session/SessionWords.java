package org.lowfirst.app.session;

import java.util.Locale;
import org.lowfirst.planning.session.Criterion;
import org.lowfirst.planning.session.HabitResult.BottleOrder;
import org.lowfirst.planning.session.Readiness;

/** The words that files, sheets and JSON of sessions use. */
final class SessionWords {

    private SessionWords() {}

    static String criterion(Criterion criterion) {
        return criterion.name().toLowerCase(Locale.ROOT);
    }

    static String readiness(Readiness readiness) {
        return switch (readiness) {
            case FULL -> "full";
            case AT_FLOOR -> "at_floor";
            case NOT_READY -> "not_ready";
        };
    }

    static String habit(BottleOrder habit) {
        return habit.name().toLowerCase(Locale.ROOT);
    }
}
