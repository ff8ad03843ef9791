package org.lowfirst.app.journal;

import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Attest;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Role;

/** How people are written. */
final class CrewParts {

    private CrewParts() {}

    static Payload write(PersonDetails person) {
        return new Payload()
                .with("person", person.name())
                .with("roles", person.roles().stream().map(Parts::lower).toList())
                .with("training", write(person.training()))
                .with("checkOut", write(person.checkOut()));
    }

    static PersonDetails person(Payload p) {
        return new PersonDetails(
                p.text("person"),
                p.texts("roles").stream()
                        .map(role -> Parts.choice(Role.class, role))
                        .collect(Collectors.toSet()),
                p.partOrNull("training", CrewParts::attest),
                p.partOrNull("checkOut", CrewParts::attest));
    }

    private static @Nullable Payload write(@Nullable Attest attest) {
        return attest == null
                ? null
                : new Payload().with("lastDay", attest.lastDay().toString()).with("source", attest.source());
    }

    private static Attest attest(Payload p) {
        return new Attest(Parts.day(p.text("lastDay")), p.text("source"));
    }
}
