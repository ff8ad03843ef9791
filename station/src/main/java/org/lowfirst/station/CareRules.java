package org.lowfirst.station;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.due.Upkeep;

/** What can be entered about equipment and local numbers; groups and shifts see {@link SquadRules}. */
final class CareRules {

    private CareRules() {}

    static @Nullable Refused check(Bench bench, CareFact fact, Circumstances circumstances) {
        if (fact instanceof CareFact.UpkeepDescribed f) {
            return described(f.upkeep(), circumstances);
        } else if (fact instanceof CareFact.UpkeepDone f) {
            Refused unknown = known(bench, f.equipment());
            return unknown == null ? notToCome(f.day(), circumstances) : unknown;
        } else if (fact instanceof CareFact.UpkeepEnded f) {
            if (f.equipment().isBlank()) {
                return Refused.of(Rule.NAME_EMPTY, "equipment");
            }
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, f.equipment()) : known(bench, f.equipment());
        } else if (fact instanceof CareFact.EmergencyCardSet f) {
            return unfinished(f.help());
        } else if (fact instanceof CareFact.AddressSet f) {
            return f.address().isBlank() ? Refused.of(Rule.NAME_EMPTY, "address") : null;
        }
        return SquadRules.check(bench, fact, circumstances);
    }

    private static @Nullable Refused described(Upkeep upkeep, Circumstances circumstances) {
        if (upkeep.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "equipment");
        }
        return upkeep.source().isBlank()
                ? Refused.of(Rule.SOURCE_EMPTY, upkeep.name())
                : notToCome(upkeep.lastDone(), circumstances);
    }

    private static @Nullable Refused known(Bench bench, String equipment) {
        return bench.areas().care().upkeep().containsKey(equipment)
                ? null
                : Refused.of(Rule.EQUIPMENT_UNKNOWN, equipment);
    }

    private static @Nullable Refused notToCome(LocalDate day, Circumstances circumstances) {
        return day.isAfter(circumstances.day()) ? Refused.of(Rule.DAY_TO_COME, day.toString()) : null;
    }

    /** A number without a name helps nobody, nor a name without a number. */
    private static @Nullable Refused unfinished(LocalHelp help) {
        return help.numbers().stream()
                .filter(one -> one.who().isBlank() || one.dial().isBlank())
                .findFirst()
                .map(one -> Refused.of(Rule.LOCAL_NUMBER_INCOMPLETE, one.who().isBlank() ? one.dial() : one.who()))
                .orElse(null);
    }
}
