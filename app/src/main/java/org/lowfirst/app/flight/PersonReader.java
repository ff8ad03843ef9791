package org.lowfirst.app.flight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.Flow;
import org.lowfirst.planning.flight.Occupant;

/** Reads one person of a flight file. */
final class PersonReader {

    private static final List<String> KEYS = List.of("name", "role", "flow", "from");

    private final Problems problems;
    private final FlowReader flows;

    PersonReader(Problems problems) {
        this.problems = problems;
        this.flows = new FlowReader(problems);
    }

    /** A person of the file, and symbol of the unit the altitude is typed in. */
    record PersonLine(Occupant occupant, Place namePlace, String unit) implements ListReader.Named {
        @Override
        public String name() {
            return occupant.name();
        }
    }

    Optional<PersonLine> read(Mapping mapping, int number) {
        Section section = new Section(mapping, "a person", KEYS, problems);
        Optional<String> name = new NameReader(problems).read(section, "person", number, "Pilot");
        String of = " of " + NameReader.label("person", name, number);
        Optional<Occupant.Role> role = role(section, of);
        Optional<Flow> flow = flows.read(section, of);
        Optional<Measure<Altitude>> from = new MeasureReader(section, problems)
                .required(
                        "from",
                        "altitude from which the device" + of + " is on",
                        PlausibleRange.of("altitude", FlightKinds.ALTITUDE));
        section.reportStrangers();
        if (name.isEmpty() || role.isEmpty() || flow.isEmpty() || from.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PersonLine(
                new Occupant(name.get(), role.get(), flow.get(), from.get().value()),
                section.placeOf("name"),
                from.get().unit()));
    }

    private Optional<Occupant.Role> role(Section section, String of) {
        Optional<Scalar> typed = section.required("role", "role" + of, "crew");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return switch (typed.get().text().toLowerCase(Locale.ROOT)) {
            case "crew" -> Optional.of(Occupant.Role.CREW);
            case "passenger" -> Optional.of(Occupant.Role.PASSENGER);
            default -> {
                problems.error(
                        typed.get().place(),
                        "The role" + of + " (" + typed.get().text() + ") must be crew or passenger; rule texts treat"
                                + " them apart.");
                yield Optional.empty();
            }
        };
    }
}
