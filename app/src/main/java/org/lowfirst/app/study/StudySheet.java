package org.lowfirst.app.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.planning.study.AlternativeResult;
import org.lowfirst.planning.study.BreakEven;
import org.lowfirst.planning.study.CostParts;
import org.lowfirst.planning.study.CostSpread;
import org.lowfirst.planning.study.Estimate;
import org.lowfirst.planning.study.Extent;
import org.lowfirst.planning.study.SentBack;
import org.lowfirst.planning.study.StudyResult;

/** A study as a sheet for people, at most 80 columns wide. */
public final class StudySheet {

    private static final int LONGEST_NAME = 20;

    private final StudyDone study;
    private final StudyResult result;
    private final ShownReadings shown;
    private final StringBuilder out = new StringBuilder();

    private StudySheet(StudyDone study) {
        this.study = study;
        this.result = study.result();
        this.shown = new ShownReadings(study.file().units().pressure());
    }

    /** The sheet, each line ended. */
    public static String of(StudyDone study) {
        return new StudySheet(study).text();
    }

    private String text() {
        Extent extent = study.file().request().extent();
        out.append(Paragraph.of(
                "",
                "STUDY of " + Numerals.count(result.alternatives().size(), "alternative") + ", "
                        + Numerals.count(result.runs(), "run") + " of " + Numerals.count(extent.years(), "year")
                        + " with about "
                        + Numerals.grouped(study.file().request().demand().fillsPerYear())
                        + " fills a year. Seed " + extent.seed() + "."));
        String cheapest = result.cheapest();
        out.append(Paragraph.of(
                "", cheapest == null ? "No alternative has made a fill." : "Cheapest per fill: " + cheapest + ". "));
        costs();
        gas();
        parts();
        breakEvens();
        out.append("\nBehind the numbers\n");
        study.notes().forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private void costs() {
        String row = "  %-20s %12s %9s %22s\n";
        out.append('\n')
                .append(String.format(Locale.ROOT, row, "cost per fill", "mean", "95 % +-", "runs from 5 to 95 %"));
        for (AlternativeResult one : result.alternatives()) {
            CostSpread spread = one.spread();
            Estimate cost = one.costPerFill();
            out.append(String.format(
                    Locale.ROOT,
                    row,
                    name(one),
                    cost == null ? "no fill" : money(cost.mean()),
                    cost == null ? "" : money((cost.high() - cost.low()) / 2.0),
                    spread == null ? "" : money(spread.low()) + " to " + money(spread.high())));
        }
    }

    private void gas() {
        String row = "  %-20s %8s %8s %9s %9s %8s %9s\n";
        out.append('\n')
                .append(String.format(
                        Locale.ROOT, row, "", "fills", "missed", "supplies", "fills per", "sent", "sent back"))
                .append(String.format(
                        Locale.ROOT, row, "", "a year", "a year", "a year", "supply", "back", shown.symbol()));
        for (AlternativeResult one : result.alternatives()) {
            SentBack back = one.sentBack();
            out.append(String.format(
                    Locale.ROOT,
                    row,
                    name(one),
                    tenths(one.usage().fillsPerYear()),
                    tenths(one.usage().missedPerYear()),
                    String.format(Locale.ROOT, "%.1f", one.usage().suppliesPerYear()),
                    tenths(one.usage().fillsPerSupply()),
                    back == null
                            ? "-"
                            : String.format(
                                    Locale.ROOT, "%.0f %%", 100.0 * back.share().mean()),
                    back == null ? "-" : shown.expected(back.meanReading())));
        }
        for (AlternativeResult one : result.alternatives()) {
            if (one.usage().outOfReachPerYear() > 0.0) {
                out.append(Paragraph.of(
                        "  ",
                        String.format(
                                Locale.ROOT,
                                "%s: %.1f of the missed fills a year are beyond any bank of this size, full as"
                                        + " delivered.",
                                one.alternative().name(),
                                one.usage().outOfReachPerYear())));
            }
        }
    }

    private void parts() {
        String row = "  %-20s %9s %9s %9s %9s %9s\n";
        out.append('\n')
                .append(String.format(
                        Locale.ROOT, row, "cost per fill for", "contents", "delivery", "rent", "bought", "missed"));
        List<String> limits = new ArrayList<>();
        for (AlternativeResult one : result.alternatives()) {
            CostParts parts = one.parts();
            if (parts != null) {
                out.append(String.format(
                        Locale.ROOT,
                        row,
                        name(one),
                        money(parts.content()),
                        money(parts.deliveries()),
                        money(parts.rent()),
                        money(parts.purchases() + parts.boosting()),
                        money(parts.missed())));
            }
            if (one.limit() != null) {
                limits.add(String.format(
                        Locale.ROOT,
                        "%s: an endless bank makes %.1f fills per supply at %s a fill; here %s on site, first outlay"
                                + " %s.",
                        one.alternative().name(),
                        one.limit().fillsPerSupply(),
                        money(one.limit().costPerFill()),
                        Numerals.count(one.storage().places(), "cylinder"),
                        money(one.storage().firstOutlay())));
            }
        }
        out.append('\n');
        limits.forEach(line -> out.append(Paragraph.of("  ", line)));
    }

    private void breakEvens() {
        if (result.breakEvens().isEmpty()) {
            return;
        }
        out.append("\nWhere another becomes as cheap, all else the same\n");
        for (BreakEven one : result.breakEvens()) {
            List<String> points = new ArrayList<>();
            point(points, "contents", one.contentFactor());
            point(points, "deliveries", one.deliveryFactor());
            point(points, "rents", one.rentFactor());
            Double fills = one.fillsPerYear();
            if (fills != null && fills < 1e5) {
                points.add(String.format(Locale.ROOT, "%.0f fills a year", fills));
            }
            out.append(Paragraph.of(
                    "  - ",
                    one.alternative() + " and " + one.against() + ": "
                            + (points.isEmpty() ? "no price or use alone does it." : String.join(", ", points) + ".")));
        }
    }

    private static void point(List<String> points, String what, @Nullable Double factor) {
        if (factor != null && factor < 1_000.0) {
            points.add(
                    String.format(Locale.ROOT, "%s at %.2f times their price", what, Objects.requireNonNull(factor)));
        }
    }

    private static String name(AlternativeResult one) {
        String name = one.alternative().name();
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "~";
    }

    private static String tenths(@Nullable Estimate estimate) {
        return estimate == null ? "-" : String.format(Locale.ROOT, "%.1f", estimate.mean());
    }

    private static String money(double value) {
        return String.format(Locale.ROOT, value != 0.0 && Math.abs(value) < 0.1 ? "%.3f" : "%,.2f", value);
    }
}
