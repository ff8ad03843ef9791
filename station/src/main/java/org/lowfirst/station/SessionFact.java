package org.lowfirst.station;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Several bottles filled from one bank by one plan. Their fills are fills like any other. */
public sealed interface SessionFact extends AreaFact {

    SessionId session();

    /**
     * @param bank name of the bank; null for the one that needs no name
     * @param wishes the bottles, in the order listed
     */
    record SessionBegun(SessionId session, @Nullable String bank, SessionAim aim, List<SessionWish> wishes)
            implements SessionFact {

        public SessionBegun {
            wishes = List.copyOf(wishes);
        }

        @Override
        public List<CylinderId> cylinders() {
            return wishes.stream().<CylinderId>map(SessionWish::bottle).toList();
        }
    }

    /**
     * What is to be done from here on; earlier plans of the session no longer count.
     *
     * @param stages in the order to follow
     */
    record SessionPlanned(SessionId session, List<PlannedStage> stages) implements SessionFact {

        public SessionPlanned {
            stages = List.copyOf(stages);
        }

        @Override
        public List<CylinderId> cylinders() {
            Set<CylinderId> supplies = new LinkedHashSet<>();
            stages.forEach(stage -> supplies.add(stage.supply()));
            return new ArrayList<>(supplies);
        }
    }

    /** A planned stage is not done. */
    record StageSkipped(SessionId session, FillId fill, SupplyId supply, String reason) implements SessionFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /** A bottle whose fill has not begun is not filled in this session. */
    record BottleLeftOut(SessionId session, FillId fill, String reason) implements SessionFact {}

    /** @param reason why before its end; empty when all was done */
    record SessionEnded(SessionId session, String reason) implements SessionFact {}
}
