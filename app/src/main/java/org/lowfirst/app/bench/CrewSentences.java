package org.lowfirst.app.bench;

import java.util.Map;
import org.lowfirst.station.CrewFact;

/** The people of the bench, said in sentences. */
final class CrewSentences {

    private CrewSentences() {}

    static String of(CrewFact fact, FactSentences names) {
        if (fact instanceof CrewFact.PersonDescribed f) {
            return names.say("person.described", Map.of("person", f.person().name()));
        } else if (fact instanceof CrewFact.PersonLeft f) {
            return names.say("person.left", Map.of("person", f.person(), "reason", f.reason()));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
