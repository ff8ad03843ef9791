package org.lowfirst.app.flight;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.Leg;

/** Reads the legs of a flight file one after another; a leg begins where the one before ends unless it says otherwise. */
final class LegReader {

    private static final List<String> KEYS = List.of("name", "time", "from", "to");

    private final Problems problems;
    private @Nullable Altitude end;
    private boolean endKnown = true;

    LegReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * A leg of the file.
     *
     * @param place where the leg stands
     * @param unit symbol of the unit its altitude is typed in
     */
    record LegLine(Leg leg, Place place, String unit) {}

    Optional<LegLine> read(Mapping mapping, int number) {
        Section section = new Section(mapping, "a leg", KEYS, problems);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<String> name = new NameReader(problems).read(section, "leg", number, "climb");
        String of = " of " + NameReader.label("leg", name, number);
        Optional<Measure<Duration>> time =
                measures.required("time", "time" + of, PlausibleRange.of("leg_time", FlightKinds.TIME));
        PlausibleRange<Altitude> range = PlausibleRange.of("altitude", FlightKinds.ALTITUDE);
        Optional<Altitude> from = section.find("from").isEmpty() && (end != null || !endKnown)
                ? Optional.ofNullable(end)
                : measures.required("from", "altitude at the start" + of, range).map(Measure::value);
        Optional<Measure<Altitude>> to = measures.required("to", "altitude at the end" + of, range);
        section.reportStrangers();
        end = to.map(Measure::value).orElse(null);
        endKnown = to.isPresent();
        if (name.isEmpty() || time.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LegLine(
                new Leg(name.get(), time.get().value(), from.get(), to.get().value()),
                section.place(),
                to.get().unit()));
    }
}
