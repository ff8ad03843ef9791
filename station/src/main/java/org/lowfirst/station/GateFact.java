package org.lowfirst.station;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PlusEntry;

/** What decides whether a bottle may be filled: rules, markings, answers, refusals set aside. Days are days at the bench. */
public sealed interface GateFact extends AreaFact {

    /**
     * The rule book as it is from now on.
     *
     * @param text the whole book, in the form of {@link org.lowfirst.station.rules.RuleBookText}
     */
    record RuleBookAdopted(String text) implements GateFact {}

    /** All of a bottle's marking as it is from now on. */
    record BottleMarked(BottleId bottle, Marking marking) implements GateFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    /** The responsible person says by which document a bottle may be filled above its marked pressure. */
    record PlusRatingEntered(BottleId bottle, PlusEntry entry) implements GateFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    record PlusRatingWithdrawn(BottleId bottle, String reason) implements GateFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    /**
     * Somebody looked at a bottle and answered the questions of the book; it counts for that day.
     *
     * @param answers by code of the question
     * @param lookedBy who looked
     */
    record ConditionAnswered(BottleId bottle, LocalDate day, Map<String, Answer> answers, String lookedBy)
            implements GateFact {

        public ConditionAnswered {
            answers = Map.copyOf(answers);
        }

        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    /** The valve of a bottle stood open when it came. */
    record BottleFoundOpen(BottleId bottle, LocalDate day) implements GateFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    /**
     * A bottle found empty or open was inspected and cleaned; it counts until the next fill.
     *
     * @param inspectedBy who did it, or whose certificate says so
     */
    record EmptyBottleInspected(BottleId bottle, LocalDate day, String inspectedBy) implements GateFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    record HammerTested(BottleId bottle, LocalDate day, String testedBy) implements GateFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    /**
     * A second person took the refusals on, for one fill on that day.
     *
     * @param filler who fills
     * @param second who takes it on, not the filler
     */
    record RefusalsSetAside(
            BottleId bottle, LocalDate day, List<Refusal> refusals, String filler, String second, String reason)
            implements GateFact {

        public RefusalsSetAside {
            refusals = List.copyOf(refusals);
        }

        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }
}
