package org.lowfirst.app.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.SessionWish;

/**
 * A session under way and the one thing to do next.
 *
 * @param session as the journal has it
 * @param act what is next
 * @param why why the plan in force was made anew; empty for the first
 */
public record SessionNow(OpenSession session, Act act, List<Surprise> why) {

    public SessionNow {
        why = List.copyOf(why);
    }

    /** What is next. */
    public sealed interface Act {

        /** Something happened that the plan does not fit. */
        record PlanAgain(List<Surprise> why) implements Act {

            public PlanAgain {
                why = List.copyOf(why);
            }
        }

        /** A bottle gets no more: its valve is shut, the hose vented, its gauge entered for the last time. */
        record Finish(OpenFill fill) implements Act {}

        /** A bottle is put on the hose for the first time. */
        record Begin(SessionWish wish, PlannedStage stage) implements Act {}

        /** A stage of a bottle that was on the hose before. */
        record GoOn(OpenFill fill, PlannedStage stage) implements Act {}

        /** Nothing is left to do. */
        record End() implements Act {}
    }

    /** Whose bottle the next act is about; null at the end and when all is planned again. */
    public @Nullable SessionWish wish() {
        if (act instanceof Act.Begin begin) {
            return begin.wish();
        } else if (act instanceof Act.GoOn on) {
            return session.findWish(on.fill().id()).orElse(null);
        } else if (act instanceof Act.Finish finish) {
            return session.findWish(finish.fill().id()).orElse(null);
        }
        return null;
    }
}
