package org.lowfirst.station;

import java.time.YearMonth;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.RuleBookReading;
import org.lowfirst.station.rules.RuleBookText;
import org.lowfirst.station.rules.TestMark;

/** What can be entered about the gate. Every cylinder in the fact is known. */
final class GateRules {

    private static final String PERSON = "person";

    private GateRules() {}

    static @Nullable Refused check(Bench bench, GateFact fact, Circumstances circumstances) {
        if (fact instanceof GateFact.RuleBookAdopted f) {
            return adopted(bench, f, circumstances);
        } else if (fact instanceof GateFact.BottleMarked f) {
            return marked(f.marking());
        } else if (fact instanceof GateFact.PlusRatingEntered) {
            return CrewRules.byResponsible(bench, circumstances);
        } else if (fact instanceof GateFact.PlusRatingWithdrawn f) {
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, "") : null;
        } else if (fact instanceof GateFact.ConditionAnswered f) {
            return f.answers().isEmpty() ? Refused.of(Rule.ANSWERS_MISSING, "") : named(f.lookedBy());
        } else if (fact instanceof GateFact.BottleFoundOpen) {
            return null;
        } else if (fact instanceof GateFact.EmptyBottleInspected f) {
            return named(f.inspectedBy());
        } else if (fact instanceof GateFact.HammerTested f) {
            return named(f.testedBy());
        } else if (fact instanceof GateFact.RefusalsSetAside f) {
            return setAside(bench, f);
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static @Nullable Refused adopted(
            Bench bench, GateFact.RuleBookAdopted adopted, Circumstances circumstances) {
        return RuleBookText.read("rule book", adopted.text()) instanceof RuleBookReading.Malformed malformed
                ? Refused.of(Rule.RULE_BOOK_MALFORMED, malformed.message())
                : CrewRules.byResponsible(bench, circumstances);
    }

    private static @Nullable Refused named(String person) {
        return person.isBlank() ? Refused.of(Rule.NAME_EMPTY, PERSON) : null;
    }

    private static @Nullable Refused marked(Marking marking) {
        StatedPressure test = marking.plate().testPressure();
        if (test != null && test.value().signum() <= 0) {
            return new Refused(Rule.TEST_PRESSURE_NOT_ABOVE_ZERO, "", test, null);
        }
        Integer fills = marking.fillsBefore();
        if (fills != null && fills < 0) {
            return Refused.of(Rule.FILLS_BELOW_ZERO, Integer.toString(fills));
        }
        YearMonth made = marking.plate().made();
        TestMark tested = marking.lastTest();
        return made != null && tested != null && tested.month().isBefore(made)
                ? Refused.of(Rule.TESTED_BEFORE_MADE, tested.month().toString())
                : null;
    }

    private static @Nullable Refused setAside(Bench bench, GateFact.RefusalsSetAside f) {
        if (f.refusals().isEmpty()) {
            return Refused.of(Rule.NOTHING_TO_SET_ASIDE, "");
        }
        if (f.filler().isBlank() || f.second().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, PERSON);
        }
        if (plain(f.filler()).equals(plain(f.second()))) {
            return Refused.of(Rule.SECOND_PERSON_NEEDED, f.filler());
        }
        return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, "") : GateKeeping.setAside(bench, f);
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
