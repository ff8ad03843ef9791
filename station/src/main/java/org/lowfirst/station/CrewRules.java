package org.lowfirst.station;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What can be entered about people, and by whom. */
final class CrewRules {

    private CrewRules() {}

    static @Nullable Refused check(Bench bench, CrewFact fact, Circumstances circumstances) {
        if (fact instanceof CrewFact.PersonDescribed f) {
            return described(bench, f.person(), circumstances);
        } else if (fact instanceof CrewFact.PersonLeft f) {
            return left(bench, f, circumstances);
        } else if (fact instanceof CrewFact.EntrySigned f) {
            return signed(bench, f);
        } else if (fact instanceof CrewFact.SecondPersonNamed f) {
            return second(bench, f.filler(), f.second(), circumstances);
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static @Nullable Refused described(Bench bench, PersonDetails person, Circumstances circumstances) {
        if (person.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "person");
        }
        if (unattested(person.training()) || unattested(person.checkOut())) {
            return Refused.of(Rule.SOURCE_EMPTY, person.name());
        }
        return byResponsible(bench, circumstances);
    }

    private static @Nullable Refused signed(Bench bench, CrewFact.EntrySigned f) {
        if (!bench.settings().people().contains(f.signer())) {
            return Refused.of(Rule.PERSON_UNKNOWN, f.signer());
        }
        return bench.areas().crew().signers(f.entry()).contains(f.signer())
                ? Refused.of(Rule.ALREADY_SIGNED, f.signer())
                : null;
    }

    /** Whether {@code filler} may begin a fill with this second person, or with none. */
    static @Nullable Refused beside(Bench bench, String filler, @Nullable String second, Circumstances circumstances) {
        if (second != null) {
            return second(bench, filler, second, circumstances);
        }
        return bench.roster().findWhySecond(filler, circumstances.day()).isPresent()
                ? Refused.of(Rule.FILLS_NOT_ALONE, filler)
                : null;
    }

    private static @Nullable Refused second(Bench bench, String filler, String second, Circumstances circumstances) {
        return bench.roster().mayStandBeside(second, filler, circumstances.day())
                ? null
                : Refused.of(Rule.CANNOT_STAND_BESIDE, second);
    }

    private static boolean unattested(@Nullable Attest attest) {
        return attest != null && attest.source().isBlank();
    }

    private static @Nullable Refused left(Bench bench, CrewFact.PersonLeft left, Circumstances circumstances) {
        if (left.person().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "person");
        }
        if (left.reason().isBlank()) {
            return Refused.of(Rule.REASON_EMPTY, left.person());
        }
        List<String> names = bench.settings().people();
        if (!names.contains(left.person())) {
            return Refused.of(Rule.PERSON_UNKNOWN, left.person());
        }
        if (names.size() == 1) {
            return Refused.of(Rule.LAST_PERSON, left.person());
        }
        return left.person().equals(circumstances.author()) ? null : byResponsible(bench, circumstances);
    }

    /** What only a person who answers for the bench may enter. */
    static @Nullable Refused byResponsible(Bench bench, Circumstances circumstances) {
        return bench.roster().isResponsible(circumstances.author())
                ? null
                : Refused.of(Rule.NOT_RESPONSIBLE, circumstances.author());
    }
}
