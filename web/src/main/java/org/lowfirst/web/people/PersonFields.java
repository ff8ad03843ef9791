package org.lowfirst.web.people;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Attest;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Role;
import org.lowfirst.station.Rule;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.people.PersonPage.RoleChoice;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.Sender;

/** The fields that describe a person. */
final class PersonFields {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.NOT_RESPONSIBLE, Sender.WHO,
            Rule.REASON_EMPTY, "reason",
            Rule.LAST_PERSON, "reason");

    private PersonFields() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }

    static List<RoleChoice> roles(Words words) {
        return Arrays.stream(Role.values())
                .map(role -> new RoleChoice(field(role), words.of(key(role) + ".what")))
                .toList();
    }

    /** Key of a role's name in the words files. */
    static String key(Role role) {
        return "role." + role.name().toLowerCase(Locale.ROOT);
    }

    private static String field(Role role) {
        return "role-" + role.name().toLowerCase(Locale.ROOT);
    }

    static Form filled(String name, @Nullable PersonDetails person) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", name);
        if (person != null) {
            person.roles().forEach(role -> fields.put(field(role), "yes"));
            fill(fields, "training", person.training());
            fill(fields, "checkout", person.checkOut());
        }
        return Form.with(fields);
    }

    private static void fill(Map<String, String> fields, String field, @Nullable Attest attest) {
        if (attest != null) {
            fields.put(field, attest.lastDay().toString());
            fields.put(field + "-by", attest.source());
        }
    }

    /** @return null with faults in the reader when something is missing or cannot be */
    static @Nullable PersonDetails read(Reader reader, Words words) {
        String name = reader.required("name", "fault.name");
        @Nullable Attest training = attest(reader, "training", words);
        @Nullable Attest checkOut = attest(reader, "checkout", words);
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", words.of("fault.key"));
        }
        return reader.form().sound() ? new PersonDetails(name, roles(reader), training, checkOut) : null;
    }

    private static Set<Role> roles(Reader reader) {
        EnumSet<Role> roles = EnumSet.noneOf(Role.class);
        for (Role role : Role.values()) {
            if (!reader.empty(field(role))) {
                roles.add(role);
            }
        }
        return roles;
    }

    private static @Nullable Attest attest(Reader reader, String field, Words words) {
        @Nullable LocalDate day = reader.dayIfTyped(field);
        String by = field + "-by";
        if (!reader.empty(field) && reader.empty(by)) {
            reader.fault(by, words.of("fault.attest.by"));
        } else if (reader.empty(field) && !reader.empty(by)) {
            reader.fault(field, words.of("fault.attest.day"));
        }
        return day == null ? null : new Attest(day, reader.text(by));
    }
}
