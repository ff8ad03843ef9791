package org.lowfirst.app.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.app.plan.CylinderReader.SupplyLine;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;

/** Reads what every question about a bank begins with: temperature, rules, hose volume and supplies. */
public final class BankReader {

    /** The keys it reads. */
    public static final List<String> KEYS = List.of("temperature", "rules", "hose_volume", "supplies");

    private final EquationOfState gas;
    private final String whole;
    private final Problems problems;

    /** @param whole what takes a bank, e.g. "a plan" */
    public BankReader(EquationOfState gas, String whole, Problems problems) {
        this.gas = gas;
        this.whole = whole;
        this.problems = problems;
    }

    /** The bank; empty when it cannot be told, and then there is an error. */
    public Optional<FileBank> read(Section section) {
        Optional<FileSite> site = site(section);
        List<SupplyLine> supplies = new ListReader(
                        "supplies",
                        "supply",
                        "name: A, water_volume: 50 L",
                        PlanFileLimits.MOST_SUPPLIES,
                        whole,
                        problems)
                .read(section, new CylinderReader(problems)::supply);
        if (site.isEmpty() || supplies.isEmpty()) {
            return Optional.empty();
        }
        ShownUnits units = new ShownUnits(
                TypedUnits.pressure(supplies.get(0).reading().unit()),
                site.get().degrees(),
                VolumeUnit.LITRE);
        return Optional.of(new FileBank(site.get().conditions(), site.get().rules(), units, supplies));
    }

    /**
     * Where the bank stands.
     *
     * @param degrees unit of the temperature as typed
     */
    public record FileSite(Conditions conditions, ReferenceRule rules, TemperatureUnit degrees) {}

    /** The same without supplies; empty when it cannot be told, and then there is an error. */
    public Optional<FileSite> site(Section section) {
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Temperature>> temperature = measures.required(
                "temperature", "temperature of the bench", PlausibleRange.of("temperature", Kind.TEMPERATURE));
        Optional<ReferenceRule> rules = rules(section);
        Optional<Measure<Volume>> hose =
                measures.optional("hose_volume", "hose volume", PlausibleRange.of("hose_volume", Kind.VOLUME));
        if (temperature.isEmpty() || rules.isEmpty()) {
            return Optional.empty();
        }
        Conditions conditions = Conditions.of(gas, temperature.get().value(), rules.get())
                .withHose(hose.map(Measure::value).orElse(new Volume(0.0)));
        return Optional.of(new FileSite(
                conditions,
                rules.get(),
                TypedUnits.temperature(temperature.get().unit())));
    }

    /** The rule set; US when it is left out. */
    public Optional<ReferenceRule> rules(Section section) {
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
}
