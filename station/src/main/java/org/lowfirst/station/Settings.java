package org.lowfirst.station;

import java.util.List;

/**
 * What a bench is set to.
 *
 * @param name name of the bench
 * @param rules rule set the bench follows
 * @param fullSupply what a full supply reads as delivered
 * @param people names to choose an author from, in the order entered
 * @param language language its pages and papers are in
 */
public record Settings(
        String name,
        Units units,
        RuleSet rules,
        Surroundings surroundings,
        StatedPressure fullSupply,
        List<String> people,
        Language language) {

    public Settings {
        people = List.copyOf(people);
    }

    /** In English. */
    public Settings(
            String name,
            Units units,
            RuleSet rules,
            Surroundings surroundings,
            StatedPressure fullSupply,
            List<String> people) {
        this(name, units, rules, surroundings, fullSupply, people, Language.ENGLISH);
    }

    /** The same with other names to choose from. */
    Settings with(List<String> names) {
        return new Settings(name, units, rules, surroundings, fullSupply, names, language);
    }
}
