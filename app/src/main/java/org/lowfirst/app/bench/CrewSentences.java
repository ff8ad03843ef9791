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
        } else if (fact instanceof CrewFact.EntrySigned f) {
            return names.say("entry.signed", Map.of("signer", f.signer(), "number", Long.toString(f.entry())));
        } else if (fact instanceof CrewFact.SecondPersonNamed f) {
            return names.say("fill.second-person-named", Map.of("filler", f.filler(), "second", f.second()));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
