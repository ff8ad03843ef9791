package org.lowfirst.station;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Who is at the bench and may do what. Somebody of whom only the name is known fills alone and may stand beside others; while
 * nobody is described as responsible, everybody on the list is. Immutable.
 *
 * @param names those on the bench's list, in its order
 * @param described what is known of people, by name; somebody not on the list counts for nothing
 */
public record Roster(List<String> names, Map<String, PersonDetails> described) {

    public Roster {
        names = List.copyOf(names);
        described = Map.copyOf(described);
    }

    /** What is known of somebody on the list. */
    public Optional<PersonDetails> find(String name) {
        return names.contains(name) ? Optional.ofNullable(described.get(name)) : Optional.empty();
    }

    /** Whether everybody counts as responsible because nobody is described so. */
    public boolean everybodyResponsible() {
        return names.stream().noneMatch(name -> has(name, Role.RESPONSIBLE));
    }

    /** Whether the person answers for the bench: describes people, changes its rules, lets warm fills stop higher. */
    public boolean isResponsible(String name) {
        return names.contains(name) && (everybodyResponsible() || has(name, Role.RESPONSIBLE));
    }

    /** Whether the person may take a refusal on for somebody else's fill. */
    public boolean maySetAside(String name, String filler) {
        return isResponsible(name) && !name.equals(filler);
    }

    /** Whether the person closes a month and corrects charges. */
    public boolean keepsCharges(String name) {
        return isResponsible(name) || (names.contains(name) && has(name, Role.TREASURER));
    }

    /** Why the person fills only with a second one beside; empty when alone will do. */
    public Optional<WhySecond> findWhySecond(String name, LocalDate day) {
        PersonDetails person = find(name).orElse(null);
        if (person == null || (person.roles().isEmpty() && person.training() == null && person.checkOut() == null)) {
            return Optional.empty();
        }
        if (person.is(Role.SUPERVISED)) {
            return Optional.of(WhySecond.SUPERVISED);
        }
        if (!person.roles().isEmpty() && !person.is(Role.FILLER) && !person.is(Role.RESPONSIBLE)) {
            return Optional.of(WhySecond.NOT_A_FILLER);
        }
        if (person.training() != null && person.training().past(day)) {
            return Optional.of(WhySecond.TRAINING_PAST);
        }
        return person.checkOut() != null && person.checkOut().past(day)
                ? Optional.of(WhySecond.CHECK_OUT_PAST)
                : Optional.empty();
    }

    /** Whether the person may stand beside a filler: on the list, another person, and one who fills alone. */
    public boolean mayStandBeside(String name, String filler, LocalDate day) {
        return names.contains(name)
                && !name.equals(filler)
                && findWhySecond(name, day).isEmpty();
    }

    private boolean has(String name, Role role) {
        PersonDetails person = described.get(name);
        return person != null && person.is(role);
    }
}
