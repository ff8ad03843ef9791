package org.lowfirst.app.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;

/** A plan as a sheet that a person can follow at the bench, at most 80 columns wide. */
public final class PlanSheet {

    /** What to see to before a valve is opened. */
    public static final List<String> BEFORE = List.of(
            "No oil, grease or lotion near oxygen: clean hands, threads and tools.",
            "Read the marking and the test date. Unreadable, damaged or overdue: no fill.",
            "Fresh air, no flame, no smoking. New to it: work with somebody who knows it.",
            "Every valve slowly, one supply at a time. The bottle feels warm: stop, wait.");

    private PlanSheet() {}

    /**
     * The sheet, each line ended.
     *
     * @param glyphs what the staircase is drawn with
     */
    public static String of(PlannedFile planned, Glyphs glyphs) {
        StringBuilder out = new StringBuilder();
        PlanWords words = new PlanWords(planned.file());
        out.append(head(planned, words));
        BEFORE.forEach(caution -> out.append(Paragraph.of("  - ", caution)));
        for (FillPlan plan : planned.plans().plans()) {
            out.append('\n').append(new BottleSheet(planned.file(), words, plan, glyphs).text());
        }
        out.append('\n').append(Paragraph.of("Bank afterwards, about: ", bankAfter(planned)));
        return out.toString();
    }

    private static String head(PlannedFile planned, PlanWords words) {
        PlanFile file = planned.file();
        String rules = file.rules() == ReferenceRule.US ? "US" : "European";
        return String.format(
                        Locale.ROOT,
                        "FILL PLAN at %s. %s rules: marked pressures count at %s.\n",
                        words.bench(),
                        rules,
                        words.reference())
                + Paragraph.of("Bank, lowest first: ", bankNow(file))
                + "\nBefore a valve is opened (markings, local codes, makers' instructions win):\n";
    }

    private static String bankNow(PlanFile file) {
        ShownReadings shown = new ShownReadings(file.units().pressure());
        List<String> supplies = file.supplies().stream()
                .sorted(Comparator.comparing(SupplyState::reading))
                .map(supply -> supply.name() + " " + shown.withUnit(shown.given(supply.reading())))
                .toList();
        return ranked(supplies);
    }

    private static String bankAfter(PlannedFile planned) {
        ShownReadings shown = new ShownReadings(planned.file().units().pressure());
        List<String> supplies = planned.plans().bankAfter().stream()
                .sorted(Comparator.comparingInt(RankedSupply::rank))
                .map(supply -> supply.name() + " " + shown.withUnit(shown.expected(supply.reading())))
                .toList();
        return ranked(supplies);
    }

    private static String ranked(List<String> supplies) {
        return IntStream.range(0, supplies.size())
                .mapToObj(place -> (place + 1) + " " + supplies.get(place))
                .collect(Collectors.joining(", ", "", "."));
    }
}
