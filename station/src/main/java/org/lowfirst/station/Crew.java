package org.lowfirst.station;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The people of the bench. Immutable.
 *
 * @param described what is known of people, by name, in the order first described
 */
public record Crew(Map<String, PersonDetails> described) {

    static final Crew NEW = new Crew(Map.of());

    public Crew {
        described = Collections.unmodifiableMap(new LinkedHashMap<>(described));
    }

    Crew after(CrewFact fact) {
        Map<String, PersonDetails> more = new LinkedHashMap<>(described);
        if (fact instanceof CrewFact.PersonDescribed f) {
            more.put(f.person().name(), f.person());
        } else if (fact instanceof CrewFact.PersonLeft f) {
            more.remove(f.person());
        } else {
            throw new AssertionError("unhandled " + fact);
        }
        return new Crew(more);
    }
}
