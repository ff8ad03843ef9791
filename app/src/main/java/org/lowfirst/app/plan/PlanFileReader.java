package org.lowfirst.app.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.file.TreeReader;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.app.plan.CylinderReader.BottleLine;
import org.lowfirst.app.plan.CylinderReader.SupplyLine;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;

/** Reads a plan file and collects everything that is wrong with it. */
final class PlanFileReader {

    private static final List<String> KEYS = List.of("temperature", "rules", "hose_volume", "supplies", "bottles");
    private static final String SHAPE =
            "A plan file has the keys temperature, supplies and bottles; " + "examples/plan-us.yaml shows one.";

    private final EquationOfState gas;
    private final Problems problems;

    PlanFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
    }

    /** What the file says; empty when it cannot be planned, and then there is at least one error. */
    Optional<PlanFile> read(SourceText source) {
        Optional<Tree> tree = TreeReader.read(source, problems);
        if (tree.isEmpty()) {
            if (!problems.haveErrors()) {
                problems.fileError("The file is empty. " + SHAPE);
            }
            return Optional.empty();
        }
        if (tree.get() instanceof Mapping mapping) {
            return file(new Section(mapping, "the plan file", KEYS, problems));
        }
        problems.error(tree.get().place(), "The file is " + tree.get().kind() + ". " + SHAPE);
        return Optional.empty();
    }

    private Optional<PlanFile> file(Section section) {
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Temperature>> temperature = measures.required(
                "temperature", "temperature of the bench", PlausibleRange.of("temperature", Kind.TEMPERATURE));
        Optional<ReferenceRule> rules = rules(section);
        Optional<Measure<Volume>> hose =
                measures.optional("hose_volume", "hose volume", PlausibleRange.of("hose_volume", Kind.VOLUME));
        CylinderReader cylinders = new CylinderReader(problems);
        List<SupplyLine> supplies =
                list("supplies", "supply", PlanFileLimits.MOST_SUPPLIES).read(section, cylinders::supply);
        List<BottleLine> bottles =
                list("bottles", "bottle", PlanFileLimits.MOST_BOTTLES).read(section, cylinders::bottle);
        section.reportStrangers();
        if (problems.haveErrors() || temperature.isEmpty() || rules.isEmpty()) {
            return Optional.empty();
        }
        Conditions conditions = Conditions.of(gas, temperature.get().value(), rules.get())
                .withHose(hose.map(Measure::value).orElse(new Volume(0.0)));
        Map<String, Place> readingPlaces = bottles.stream()
                .collect(Collectors.toMap(
                        BottleLine::name, line -> line.reading().place()));
        MixedUnits mixed = new MixedUnits(problems);
        mixed.warn(supplies.get(0).reading(), supplies);
        mixed.warn(supplies.get(0).reading(), bottles);
        return Optional.of(new PlanFile(
                conditions,
                rules.get(),
                units(temperature.get(), supplies),
                supplies.stream().map(SupplyLine::supply).toList(),
                bottles.stream().map(BottleLine::bottle).toList(),
                readingPlaces));
    }

    private ListReader list(String key, String word, int most) {
        return new ListReader(key, word, "name: A, water_volume: 50 L", most, "a plan", problems);
    }

    private Optional<ReferenceRule> rules(Section section) {
        if (section.find("rules").isEmpty()) {
            return Optional.of(ReferenceRule.US);
        }
        Optional<Scalar> scalar = section.optional("rules", "rule set", "us");
        Optional<ReferenceRule> rules = scalar.map(word -> word.text().toLowerCase(Locale.ROOT))
                .flatMap(word -> Optional.ofNullable(
                        Map.of("us", ReferenceRule.US, "eu", ReferenceRule.EU).get(word)));
        if (scalar.isPresent() && rules.isEmpty()) {
            problems.error(
                    scalar.get().place(),
                    "The rule set \"" + scalar.get().text() + "\" is not known. Write us (marked pressures count at "
                            + "70 F) or eu (at 15 C).");
        }
        return rules;
    }

    /** The units of the first supply and of the bench's temperature. */
    private static ShownUnits units(Measure<Temperature> temperature, List<SupplyLine> supplies) {
        String typed = supplies.get(0).reading().unit();
        PressureUnit pressure = TypedUnits.pressure(typed);
        TemperatureUnit degrees = TypedUnits.temperature(temperature.unit());
        return new ShownUnits(pressure, degrees, VolumeUnit.LITRE);
    }
}
