package org.lowfirst.station;

import java.util.List;

/**
 * The command stands.
 *
 * @param facts what is to be entered, all or nothing, in order; at least one
 */
public record Accepted(List<Fact> facts) implements Decision {

    public Accepted {
        facts = List.copyOf(facts);
        if (facts.isEmpty()) {
            throw new IllegalArgumentException("An accepted command must give at least one fact.");
        }
    }
}
