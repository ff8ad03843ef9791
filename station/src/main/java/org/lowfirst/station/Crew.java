package org.lowfirst.station;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * The people of the bench. Immutable.
 *
 * @param left names of those who left
 */
public record Crew(Set<String> left) {

    static final Crew NEW = new Crew(Set.of());

    public Crew {
        left = Set.copyOf(left);
    }

    Crew after(CrewFact fact) {
        if (fact instanceof CrewFact.PersonLeft f) {
            Set<String> more = new LinkedHashSet<>(left);
            more.add(f.person());
            return new Crew(more);
        }
        throw new AssertionError("unhandled " + fact);
    }
}
