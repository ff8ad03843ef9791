package org.lowfirst.app.session;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.lowfirst.app.plan.FileBank;
import org.lowfirst.app.plan.PlanSheet;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.planning.Cap;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.session.BottleEnd;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionStep;
import org.lowfirst.transfer.Ending;

/** A session as a sheet that a person can follow at the bench, at most 80 columns wide. */
public final class SessionSheet {

    private final PlannedSession session;
    private final FileBank bank;
    private final SessionPlan plan;
    private final ShownReadings shown;
    private final StringBuilder out = new StringBuilder();

    private SessionSheet(PlannedSession session) {
        this.session = session;
        this.bank = session.file().bank();
        this.plan = session.plan();
        this.shown = new ShownReadings(bank.units().pressure());
    }

    /** The sheet, each line ended. */
    public static String of(PlannedSession session) {
        return new SessionSheet(session).text();
    }

    private String text() {
        head();
        steps();
        bottles();
        String after = IntStream.range(0, plan.course().bankAfter().size())
                .mapToObj(i -> plan.course().bankAfter().get(i))
                .map(supply ->
                        supply.rank() + " " + supply.name() + " " + shown.withUnit(shown.expected(supply.reading())))
                .collect(Collectors.joining(", ", "", "."));
        out.append('\n').append(Paragraph.of("Bank afterwards, about: ", after));
        out.append("\nWhy, and what goes with the numbers\n");
        session.notes().forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private void head() {
        out.append(String.format(
                Locale.ROOT,
                "SESSION PLAN at %s. %s rules: marked pressures count at %s.\n",
                bank.units().show(bank.conditions().bench()),
                bank.rules() == ReferenceRule.US ? "US" : "European",
                bank.rules() == ReferenceRule.US ? "70 F" : "15 C"));
        int bottles = plan.request().bottles().size();
        out.append(Paragraph.of(
                "",
                plan.score().ready() + " of " + bottles + " bottles end ready, "
                        + plan.score().full()
                        + " of them at their target. " + plan.score().changes() + " changes of hose or supply, "
                        + clock(plan.score().time_s()) + " h with waits."));
        out.append("\nBefore a valve is opened (markings, local codes, makers' instructions win):\n");
        PlanSheet.BEFORE.forEach(caution -> out.append(Paragraph.of("  - ", caution)));
    }

    private void steps() {
        List<SessionStep> steps = plan.course().steps();
        if (steps.isEmpty()) {
            out.append("\nNothing is opened: no bottle can be made ready.\n");
            return;
        }
        int bottle = width(steps.stream().map(SessionStep::bottle).toList(), "bottle");
        int supply = width(steps.stream().map(SessionStep::supply).toList(), "supply");
        String row = "  %-6s %3s  %-" + bottle + "s %14s  %-" + supply + "s %14s  %s\n";
        out.append('\n')
                .append(String.format(
                        Locale.ROOT, row, "h:mm", "", "bottle", shown.symbol(), "supply", shown.symbol(), "shut when"));
        int number = 0;
        for (SessionStep step : steps) {
            number++;
            String stop = step.ends() == Ending.TARGET
                    ? "bottle at " + shown.limit(step.bottleReading().after())
                    : "gauges meet";
            out.append(String.format(
                    Locale.ROOT,
                    row,
                    clock(step.start_s()),
                    number,
                    cut(step.bottle(), bottle),
                    shown.found(step.bottleReading().before()) + " -> "
                            + shown.expected(step.bottleReading().after()),
                    cut(step.supply(), supply),
                    shown.found(step.supplyReading().before()) + " -> "
                            + shown.expected(step.supplyReading().after()),
                    stop));
        }
        out.append(Paragraph.of(
                "  ",
                "In this order, each valve slowly, one supply open at a time. Between two bottles: shut bottle and"
                        + " supply, vent the hose, change it over."));
    }

    private void bottles() {
        out.append('\n');
        for (BottleEnd end : plan.course().ends()) {
            String reading = shown.withUnit(shown.expected(end.reading()));
            String words = switch (end.readiness()) {
                case FULL -> "full at " + shown.withUnit(shown.limit(end.stop())) + ".";
                case AT_FLOOR ->
                    "at " + reading + ", its floor; its target is " + shown.withUnit(shown.limit(end.stop())) + ".";
                case NOT_READY -> "not taken on; it stays at " + reading + ".";
            };
            String cold = end.cap() == Cap.COLD_BENCH ? " The cold bench lowers its stop." : "";
            out.append(Paragraph.of("  Bottle " + end.name() + ": ", words + cold));
        }
    }

    private static int width(List<String> names, String heading) {
        int longest = names.stream().mapToInt(String::length).max().orElse(0);
        return Math.max(heading.length(), Math.min(11, longest));
    }

    private static String cut(String name, int width) {
        return name.length() <= width ? name : name.substring(0, width - 1) + "~";
    }

    private static String clock(double seconds) {
        long minutes = Math.round(seconds / 60.0);
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
