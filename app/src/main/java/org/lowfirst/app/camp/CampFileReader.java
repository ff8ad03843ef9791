package org.lowfirst.app.camp;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile.Shape;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.app.plan.BankReader;
import org.lowfirst.app.plan.UsedBottles;
import org.lowfirst.app.plan.UsedBottles.UseLine;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.camp.CampRequest;

/** Reads a camp file and collects everything that is wrong with it. */
final class CampFileReader {

    static final Shape SHAPE = new Shape(
            "the camp file",
            List.of(
                    "temperature",
                    "rules",
                    "hose_volume",
                    "supply_water_volume",
                    "supply_reading",
                    "bottles",
                    "days",
                    "pilots",
                    "fills_per_pilot",
                    "flyable",
                    "chance",
                    "seed"),
            "a camp file has one line for each bottle",
            "examples/camp.yaml");

    private final EquationOfState gas;
    private final Problems problems;
    private final NumberReader numbers;

    CampFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
        this.numbers = new NumberReader(problems);
    }

    /**
     * @param request what it asks
     * @param units the units it uses, in which the sheet answers
     * @param noted where things stand in the file
     */
    record CampFile(CampRequest request, ReferenceRule rules, ShownUnits units, NumberReader noted) {}

    /** What the file asks; empty when it cannot be told, and then there is at least one error. */
    Optional<CampFile> read(Section section) {
        Optional<BankReader.FileSite> site = new BankReader(gas, "a camp", problems).site(section);
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Volume>> volume = measures.required(
                "supply_water_volume",
                "water volume of the supplies",
                PlausibleRange.of("supply_water_volume", Kind.VOLUME));
        Optional<Measure<GaugePressure>> full = measures.required(
                "supply_reading", "reading of the supplies", PlausibleRange.of("full_supply", Kind.PRESSURE));
        volume.ifPresent(typed -> numbers.note("water volume of the supplies", typed.place()));
        full.ifPresent(typed -> numbers.note("reading of the supplies", typed.place()));
        List<UseLine> bottles = new UsedBottles("a camp", numbers, problems).read(section);
        Optional<Long> days = numbers.requiredWhole(section, "days", "number of days", "7");
        Optional<Long> pilots = numbers.requiredWhole(section, "pilots", "number of pilots", "6");
        Optional<Double> fills =
                numbers.required(section, "fills_per_pilot", "fills of a pilot on a day that is flown", "0.5");
        double flyable = numbers.optional(section, "flyable", "chance that a day is flown", "0.7")
                .orElse(1.0);
        double chance = numbers.optional(section, "chance", "chance wanted that every bottle can be finished", "0.9")
                .orElse(0.9);
        long seed = numbers.optionalWhole(section, "seed", "seed", "1").orElse(1L);
        numbers.note("number of fills to be expected", section.placeOf("fills_per_pilot"));
        section.reportStrangers();
        if (problems.haveErrors()
                || site.isEmpty()
                || volume.isEmpty()
                || full.isEmpty()
                || days.isEmpty()
                || pilots.isEmpty()
                || fills.isEmpty()) {
            return Optional.empty();
        }
        CampRequest request = new CampRequest(
                site.get().conditions(),
                volume.get().value(),
                full.get().value(),
                bottles.stream().map(UseLine::use).toList(),
                small(days.get()),
                small(pilots.get()),
                fills.get(),
                flyable,
                chance,
                seed);
        ShownUnits units = new ShownUnits(
                TypedUnits.pressure(full.get().unit()), site.get().degrees(), VolumeUnit.LITRE);
        return Optional.of(new CampFile(request, site.get().rules(), units, numbers));
    }

    /** Numbers beyond this are refused later; they only must not wrap around. */
    private static int small(long number) {
        return (int) Math.max(-1_000_000_000, Math.min(1_000_000_000, number));
    }
}
