package org.lowfirst.app.plan;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.study.BottleUse;

/** Reads bottles that come over and over: with which readings, and how often. */
public final class UsedBottles {

    private static final int MOST = 100;
    private static final List<String> KEYS = List.of(
            "name", "water_volume", "service_pressure", "target", "start", "start_lowest", "start_highest", "share");

    private final String whole;
    private final NumberReader numbers;
    private final Problems problems;

    /** @param whole what takes them, e.g. "a study" */
    public UsedBottles(String whole, NumberReader numbers, Problems problems) {
        this.whole = whole;
        this.numbers = numbers;
        this.problems = problems;
    }

    /** @param unit symbol of the unit its target is typed in */
    public record UseLine(BottleUse use, Place namePlace, String unit) implements ListReader.Named {
        @Override
        public String name() {
            return use.name();
        }
    }

    /** The bottles under the key "bottles". */
    public List<UseLine> read(Section file) {
        return new ListReader("bottles", "bottle", "name: R1, water_volume: 5 L", MOST, whole, problems)
                .read(file, this::bottle);
    }

    private Optional<UseLine> bottle(Mapping mapping, int number) {
        Section section = new Section(mapping, "a bottle", KEYS, problems);
        Optional<String> name = new NameReader(problems).read(section, "bottle", number, "R1");
        String of = " of " + NameReader.label("bottle", name, number);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Volume>> volume = measures.required(
                "water_volume", "water volume" + of, PlausibleRange.of("bottle_water_volume", Kind.VOLUME));
        Optional<Measure<GaugePressure>> marked =
                pressure(measures, "service_pressure", "service pressure" + of, "service_pressure");
        Optional<Measure<GaugePressure>> target = pressure(measures, "target", "target" + of, "target");
        boolean span = section.find("start").isEmpty();
        Optional<Measure<GaugePressure>> low = span
                ? pressure(measures, "start_lowest", "lowest start reading" + of, "reading")
                : pressure(measures, "start", "start reading" + of, "reading");
        Optional<Measure<GaugePressure>> high =
                span ? pressure(measures, "start_highest", "highest start reading" + of, "reading") : low;
        double share = numbers.optional(section, "share", "share" + of, "2").orElse(1.0);
        section.reportStrangers();
        if (name.isEmpty()
                || volume.isEmpty()
                || marked.isEmpty()
                || target.isEmpty()
                || low.isEmpty()
                || high.isEmpty()) {
            return Optional.empty();
        }
        numbers.note("water volume" + of, volume.get().place());
        numbers.note("service pressure" + of, marked.get().place());
        numbers.note("target" + of, target.get().place());
        numbers.note("lowest start reading" + of, low.get().place());
        numbers.note("highest start reading" + of, high.get().place());
        numbers.note("start reading" + of, low.get().place());
        numbers.note("reading" + of, low.get().place());
        BottleUse use = new BottleUse(
                name.get(),
                volume.get().value(),
                marked.get().value(),
                target.get().value(),
                low.get().value(),
                high.get().value(),
                share);
        return Optional.of(
                new UseLine(use, section.placeOf("name"), target.get().unit()));
    }

    private static Optional<Measure<GaugePressure>> pressure(
            MeasureReader measures, String key, String what, String range) {
        return measures.required(key, what, PlausibleRange.of(range, Kind.PRESSURE));
    }
}
