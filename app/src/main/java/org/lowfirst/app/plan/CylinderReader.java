package org.lowfirst.app.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;

/** Reads one supply or one bottle. */
public final class CylinderReader {

    private static final List<String> SUPPLY_KEYS = List.of("name", "water_volume", "reading", "turn");
    private static final Map<String, Turn> TURNS =
            Map.of("by-rank", Turn.BY_RANK, "first", Turn.FIRST, "held-back", Turn.HELD_BACK);
    private static final List<String> BOTTLE_KEYS =
            List.of("name", "water_volume", "reading", "target", "service_pressure");

    private final Problems problems;
    private final List<String> bottleKeys;
    private final NameReader names;
    private final PlausibleRange<GaugePressure> reading = PlausibleRange.of("reading", Kind.PRESSURE);
    private final PlausibleRange<GaugePressure> target = PlausibleRange.of("target", Kind.PRESSURE);
    private final PlausibleRange<GaugePressure> service = PlausibleRange.of("service_pressure", Kind.PRESSURE);

    public CylinderReader(Problems problems) {
        this(problems, List.of());
    }

    /** @param furtherBottleKeys keys of a bottle that the caller reads, see {@link BottleLine#section} */
    public CylinderReader(Problems problems, List<String> furtherBottleKeys) {
        this.problems = problems;
        this.bottleKeys =
                Stream.concat(BOTTLE_KEYS.stream(), furtherBottleKeys.stream()).toList();
        this.names = new NameReader(problems);
    }

    /** A cylinder of the file with the places that later checks point at. */
    public sealed interface Line extends ListReader.Named permits SupplyLine, BottleLine {

        Measure<GaugePressure> reading();

        /** How problems name it. */
        String label();
    }

    public record SupplyLine(SupplyState supply, Place namePlace, Measure<GaugePressure> reading) implements Line {
        @Override
        public String name() {
            return supply.name();
        }

        @Override
        public String label() {
            return "supply " + name();
        }
    }

    /** @param section its keys */
    public record BottleLine(BottleToFill bottle, Section section, Place namePlace, Measure<GaugePressure> reading)
            implements Line {
        @Override
        public String name() {
            return bottle.name();
        }

        @Override
        public String label() {
            return "bottle " + name();
        }
    }

    public Optional<SupplyLine> supply(Mapping mapping, int number) {
        Section section = new Section(mapping, "a supply", SUPPLY_KEYS, problems);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<String> name = names.read(section, "supply", number, "A");
        String of = " of " + NameReader.label("supply", name, number);
        Optional<Measure<Volume>> volume = measures.required(
                "water_volume", "water volume" + of, PlausibleRange.of("supply_water_volume", Kind.VOLUME));
        Optional<Measure<GaugePressure>> read = measures.required("reading", "reading" + of, reading);
        Turn turn = turn(section, of);
        section.reportStrangers();
        if (name.isEmpty() || volume.isEmpty() || read.isEmpty()) {
            return Optional.empty();
        }
        SupplyState supply =
                new SupplyState(name.get(), volume.get().value(), read.get().value(), turn);
        return Optional.of(new SupplyLine(supply, section.placeOf("name"), read.get()));
    }

    private Turn turn(Section section, String of) {
        Optional<Scalar> typed =
                section.find("turn").isEmpty() ? Optional.empty() : section.optional("turn", "turn" + of, "first");
        if (typed.isEmpty()) {
            return Turn.BY_RANK;
        }
        Turn turn = TURNS.get(typed.get().text().toLowerCase(Locale.ROOT));
        if (turn == null) {
            problems.error(
                    typed.get().place(),
                    "The turn" + of + " (\"" + typed.get().text()
                            + "\") is not known. Write first (opened before those of"
                            + " lower rank), held-back (not opened) or by-rank, or leave it out.");
            return Turn.BY_RANK;
        }
        return turn;
    }

    public Optional<BottleLine> bottle(Mapping mapping, int number) {
        Section section = new Section(mapping, "a bottle", bottleKeys, problems);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<String> name = names.read(section, "bottle", number, "R1");
        String of = " of " + NameReader.label("bottle", name, number);
        Optional<Measure<Volume>> volume = measures.required(
                "water_volume", "water volume" + of, PlausibleRange.of("bottle_water_volume", Kind.VOLUME));
        Optional<Measure<GaugePressure>> read = measures.required("reading", "reading" + of, reading);
        Optional<Measure<GaugePressure>> wanted = measures.required("target", "target" + of, target);
        Optional<Measure<GaugePressure>> marked =
                measures.required("service_pressure", "service pressure" + of, service);
        section.reportStrangers();
        if (wanted.isPresent() && marked.isPresent()) {
            checkTarget(wanted.get(), marked.get(), of);
        }
        if (name.isEmpty() || volume.isEmpty() || read.isEmpty() || wanted.isEmpty() || marked.isEmpty()) {
            return Optional.empty();
        }
        BottleToFill bottle = new BottleToFill(
                name.get(),
                volume.get().value(),
                read.get().value(),
                wanted.get().value(),
                marked.get().value());
        return Optional.of(new BottleLine(bottle, section, section.placeOf("name"), read.get()));
    }

    private void checkTarget(Measure<GaugePressure> wanted, Measure<GaugePressure> marked, String of) {
        if (wanted.value().compareTo(marked.value()) > 0) {
            problems.error(
                    wanted.place(),
                    "The target" + of + " (" + wanted.written() + ") is above its service pressure (" + marked.written()
                            + "). Set it to " + marked.written() + " or less.");
        } else if (wanted.number() > 0.5 * marked.number()
                && wanted.value().pascals() < 0.25 * marked.value().pascals()) {
            problems.warning(
                    wanted.place(),
                    "The target" + of + " (" + wanted.written() + ") is far below its service pressure ("
                            + marked.written() + "). Maybe " + Numerals.grouped(wanted.number()) + " " + marked.unit()
                            + " was meant.");
        }
    }
}
