package org.lowfirst.app.flight;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.flight.BottleOnBoard;

/** Reads one bottle on board. */
final class BoardReader {

    private static final List<String> KEYS = List.of("name", "water_volume", "reading", "service_pressure", "keep");

    private final Problems problems;

    BoardReader(Problems problems) {
        this.problems = problems;
    }

    /** A bottle of the file, the place of its reading, and symbol of the unit it is typed in. */
    record BottleLine(BottleOnBoard bottle, Place namePlace, Place readingPlace, String unit)
            implements ListReader.Named {
        @Override
        public String name() {
            return bottle.name();
        }
    }

    Optional<BottleLine> read(Mapping mapping, int number) {
        Section section = new Section(mapping, "a bottle", KEYS, problems);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<String> name = new NameReader(problems).read(section, "bottle", number, "R1");
        String of = " of " + NameReader.label("bottle", name, number);
        Optional<Measure<Volume>> volume = measures.required(
                "water_volume", "water volume" + of, PlausibleRange.of("bottle_water_volume", Kind.VOLUME));
        Optional<Measure<GaugePressure>> reading =
                measures.required("reading", "reading" + of, PlausibleRange.of("reading", Kind.PRESSURE));
        Optional<Measure<GaugePressure>> marked = measures.required(
                "service_pressure", "service pressure" + of, PlausibleRange.of("service_pressure", Kind.PRESSURE));
        Optional<Measure<GaugePressure>> keep =
                measures.required("keep", "keep pressure" + of, PlausibleRange.of("keep", Kind.PRESSURE));
        section.reportStrangers();
        if (name.isEmpty() || volume.isEmpty() || reading.isEmpty() || marked.isEmpty() || keep.isEmpty()) {
            return Optional.empty();
        }
        if (keep.get().value().compareTo(marked.get().value()) >= 0) {
            problems.error(
                    keep.get().place(),
                    "The keep pressure" + of + " (" + keep.get().written() + ") must be below its service"
                            + " pressure (" + marked.get().written() + "). Correct one of them.");
            return Optional.empty();
        }
        BottleOnBoard bottle = new BottleOnBoard(
                name.get(),
                volume.get().value(),
                reading.get().value(),
                marked.get().value(),
                keep.get().value());
        return Optional.of(new BottleLine(
                bottle,
                section.placeOf("name"),
                reading.get().place(),
                reading.get().unit()));
    }
}
