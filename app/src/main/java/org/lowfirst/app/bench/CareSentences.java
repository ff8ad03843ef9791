package org.lowfirst.app.bench;

import java.util.Map;
import org.lowfirst.station.CareFact;

/** Equipment, groups of bottles, local numbers, said in sentences. */
final class CareSentences {

    private CareSentences() {}

    static String of(CareFact fact, FactSentences names) {
        if (fact instanceof CareFact.UpkeepEnded f) {
            return names.say("upkeep.ended", Map.of("equipment", f.equipment(), "reason", f.reason()));
        }
        if (fact instanceof CareFact.EmergencyCardSet f) {
            return names.say(
                    "emergency-card.set",
                    Map.of("numbers", Integer.toString(f.help().numbers().size())));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
