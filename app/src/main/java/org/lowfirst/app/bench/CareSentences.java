package org.lowfirst.app.bench;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.station.CareFact;

/** Equipment, groups of bottles, local numbers, said in sentences. */
final class CareSentences {

    private CareSentences() {}

    static String of(CareFact fact, FactSentences names) {
        if (fact instanceof CareFact.UpkeepDescribed f) {
            return names.say(
                    "upkeep.described",
                    Map.of(
                            "equipment", f.upkeep().name(),
                            "months", Integer.toString(f.upkeep().months()),
                            "day", f.upkeep().lastDone().toString()));
        } else if (fact instanceof CareFact.UpkeepDone f) {
            return names.say(
                    "upkeep.done",
                    Map.of("equipment", f.equipment(), "day", f.day().toString()));
        } else if (fact instanceof CareFact.UpkeepEnded f) {
            return names.say("upkeep.ended", Map.of("equipment", f.equipment(), "reason", f.reason()));
        }
        if (fact instanceof CareFact.EmergencyCardSet f) {
            return names.say(
                    "emergency-card.set",
                    Map.of("numbers", Integer.toString(f.help().numbers().size())));
        }
        if (fact instanceof CareFact.AddressSet f) {
            return names.say("address.set", Map.of("address", f.address()));
        }
        return ofSquad(fact, names);
    }

    private static String ofSquad(CareFact fact, FactSentences names) {
        if (fact instanceof CareFact.GroupDescribed f) {
            return names.say(
                    "group.described",
                    Map.of(
                            "group", f.group().name(),
                            "floor", names.said(f.group().floor()),
                            "wish", names.said(f.group().wish())));
        } else if (fact instanceof CareFact.GroupEnded f) {
            return names.say("group.ended", Map.of("group", f.group()));
        } else if (fact instanceof CareFact.BottleAssigned f) {
            String group = f.group();
            return group == null
                    ? names.say("bottle.assigned.none", Map.of("bottle", names.name(f.bottle())))
                    : names.say(
                            "bottle.assigned."
                                    + f.place().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                            Map.of("bottle", names.name(f.bottle()), "group", group));
        } else if (fact instanceof CareFact.BottlesSwapped f) {
            return names.say("bottles.swapped", Map.of("out", names.name(f.out()), "in", names.name(f.in())));
        } else if (fact instanceof CareFact.ShiftStarted) {
            return names.say("shift.started", Map.of());
        }
        throw new AssertionError("unhandled " + fact);
    }
}
