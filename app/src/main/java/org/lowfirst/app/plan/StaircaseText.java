package org.lowfirst.app.plan;

import java.util.Arrays;
import java.util.Locale;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Staircase;
import org.lowfirst.planning.Staircase.Tread;

/**
 * The staircase of one fill in at most 80 columns: for each stage a bar for the bottle, rising, and one for the supply, falling
 * to meet it, on one scale with a line at the stop.
 */
final class StaircaseText {

    private static final int BAR = 40;
    private static final int LONGEST_LABEL = 14;

    private final Staircase stairs;
    private final PressureUnit unit;
    private final ShownReadings shown;
    private final Glyphs glyphs;
    private final StringBuilder out = new StringBuilder();
    private final double top;
    private final int label;
    private final int digits;

    StaircaseText(FillPlan plan, PressureUnit unit, Glyphs glyphs) {
        this.stairs = Staircase.of(plan);
        this.unit = unit;
        this.shown = new ShownReadings(unit);
        this.glyphs = glyphs;
        this.top = Scale.endFor(stairs.top().to(unit));
        this.label = stairs.treads().stream()
                .mapToInt(tread -> Math.min(LONGEST_LABEL, name(tread).length()))
                .reduce("bottle".length(), Math::max);
        this.digits = shown.limit(stairs.top()).length();
    }

    /** The picture, one line per bar, each ended; empty when there is no stage. */
    String draw() {
        if (stairs.treads().isEmpty()) {
            return "";
        }
        axis();
        boolean first = true;
        for (Tread tread : stairs.treads()) {
            if (!first) {
                row("", "", bar(0, 0, ' '));
            }
            bottle(tread, first);
            supply(tread);
            first = false;
        }
        legend();
        return out.toString();
    }

    private void bottle(Tread tread, boolean first) {
        GaugePressure from = tread.bottle().before();
        String before = first ? shown.given(from) : shown.expected(from);
        String after = tread.atStop()
                ? shown.limit(tread.bottle().after())
                : shown.expected(tread.bottle().after());
        int start = Math.min(BAR - 1, cell(from));
        int end = Math.max(start + 1, cell(tread.bottle().after()));
        row("bottle", change(before, after), bar(start, end, glyphs.gained()));
    }

    private void supply(Tread tread) {
        int start = Math.min(BAR - 1, cell(tread.supplyReading().after()));
        int end = Math.max(start + 1, cell(tread.supplyReading().before()));
        String readings = change(
                shown.found(tread.supplyReading().before()),
                shown.expected(tread.supplyReading().after()));
        row(shortened(name(tread)), readings, bar(start, end, glyphs.given()));
    }

    /** A bar held to {@code start}, then changed to {@code end}; the stop line shows where the bar does not. */
    private char[] bar(int start, int end, char changed) {
        char[] cells = new char[BAR + 1];
        Arrays.fill(cells, ' ');
        cells[Math.min(BAR, cell(stairs.stop()))] = glyphs.mark();
        Arrays.fill(cells, 0, start, glyphs.held());
        Arrays.fill(cells, start, end, changed);
        return cells;
    }

    private void axis() {
        char[] numbers = new char[BAR + 8];
        Arrays.fill(numbers, ' ');
        double step = Scale.stepFor(top);
        for (int i = 0; i * step <= top + step * 1e-9; i++) {
            String number = String.format(Locale.ROOT, step < 1 ? "%,.1f" : "%,.0f", i * step);
            int at = (int) Math.rint(BAR * i * step / top);
            number.getChars(0, number.length(), numbers, at);
        }
        row(unit.symbol(), "", numbers);
    }

    private void legend() {
        String words = String.format(
                Locale.ROOT,
                "%c held  %c gained by the bottle  %c given by the supply  %c stop %s",
                glyphs.held(),
                glyphs.gained(),
                glyphs.given(),
                glyphs.mark(),
                shown.limit(stairs.stop()));
        out.append("  ").append(words).append('\n');
    }

    private void row(String name, String readings, char[] cells) {
        String line = String.format(
                Locale.ROOT, "  %-" + label + "s  %" + (2 * digits + 4) + "s  %s", name, readings, new String(cells));
        out.append(line.stripTrailing()).append('\n');
    }

    private int cell(GaugePressure reading) {
        return (int) Math.max(0, Math.min(BAR, Math.rint(BAR * reading.to(unit) / top)));
    }

    private String change(String before, String after) {
        return String.format(Locale.ROOT, "%" + digits + "s -> %" + digits + "s", before, after);
    }

    private static String name(Tread tread) {
        return tread.rank() + " " + tread.supply();
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_LABEL ? name : name.substring(0, LONGEST_LABEL - 1) + "~";
    }
}
