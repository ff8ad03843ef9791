package org.lowfirst.station;

import java.util.List;

/**
 * What a bench is set to.
 *
 * @param name name of the bench
 * @param rules rule set the bench follows
 * @param fullSupply what a full supply reads as delivered
 * @param people names to choose an author from, in the order entered
 */
public record Settings(
        String name,
        Units units,
        RuleSet rules,
        Surroundings surroundings,
        StatedPressure fullSupply,
        List<String> people) {

    public Settings {
        people = List.copyOf(people);
    }

    /** The same with other names to choose from. */
    Settings with(List<String> names) {
        return new Settings(name, units, rules, surroundings, fullSupply, names);
    }
}
