package org.lowfirst.web.people;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Attest;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Roster;
import org.lowfirst.station.WhySecond;
import org.lowfirst.web.people.PeoplePage.Line;
import org.lowfirst.web.workplace.BenchNow;

/** Writes what is known of people. */
final class PersonWriter {

    /** Days ahead that an end is told (common practice, no source). */
    private static final long SOON = 90;

    private final BenchNow now;
    private final Roster roster;

    PersonWriter(BenchNow now, Roster roster) {
        this.now = now;
        this.roster = roster;
    }

    Line line(String name, String link) {
        @Nullable PersonDetails person = roster.find(name).orElse(null);
        List<String> attests = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        if (person != null) {
            tell("training", person.training(), attests, warnings);
            tell("checkout", person.checkOut(), attests, warnings);
        }
        roster.findWhySecond(name, now.today())
                .ifPresent(why -> warnings.add(now.words().of(key(why))));
        return new Line(
                name,
                link,
                person == null
                        ? List.of()
                        : person.roles().stream()
                                .map(role -> now.words().of(PersonFields.key(role)))
                                .toList(),
                attests,
                warnings);
    }

    /** Key of the sentence that says why somebody fills with a second person. */
    static String key(WhySecond why) {
        return "second.why." + why.name().toLowerCase(Locale.ROOT);
    }

    private void tell(String what, @Nullable Attest attest, List<String> attests, List<String> warnings) {
        if (attest == null) {
            return;
        }
        LocalDate last = attest.lastDay();
        String day = now.times().day(last);
        attests.add(now.words().of("person." + what + ".line", day, attest.source()));
        long left = ChronoUnit.DAYS.between(now.today(), last);
        if (left < 0) {
            warnings.add(now.words().of("person." + what + ".past", day));
        } else if (left <= SOON) {
            warnings.add(now.words().count("person." + what + ".soon", left, day));
        }
    }
}
