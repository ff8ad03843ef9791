package org.lowfirst.app.plan;

import java.util.Locale;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Skipped;
import org.lowfirst.planning.Step;
import org.lowfirst.transfer.Ending;

/** The part of the sheet that is about one bottle. */
final class BottleSheet {

    private final PlanFile file;
    private final PlanWords words;
    private final FillPlan plan;
    private final Glyphs glyphs;
    private final ShownReadings shown;
    private final StringBuilder out = new StringBuilder();

    BottleSheet(PlanFile file, PlanWords words, FillPlan plan, Glyphs glyphs) {
        this.file = file;
        this.words = words;
        this.plan = plan;
        this.glyphs = glyphs;
        this.shown = new ShownReadings(file.units().pressure());
    }

    String text() {
        title();
        result();
        steps();
        skipped();
        out.append(new StaircaseText(plan, file.units().pressure(), glyphs).draw());
        return out.toString();
    }

    private void title() {
        BottleToFill bottle = plan.request().bottle();
        String title = String.format(
                Locale.ROOT,
                "BOTTLE %s (%s L): from %s to %s",
                bottle.name(),
                Numerals.grouped(bottle.waterVolume().toLitres()),
                shown.given(bottle.reading()),
                shown.withUnit(shown.given(bottle.target())));
        out.append(title)
                .append('\n')
                .append("-".repeat(Math.min(80, title.length())))
                .append('\n');
    }

    private void result() {
        String stop = shown.withUnit(shown.limit(plan.stop().reading()));
        String litres = String.format(
                Locale.ROOT,
                "%,.0f L of gas (%s).",
                file.standardLitres(plan.fill().delivered()),
                file.standard().label());
        if (plan.reaches()) {
            paragraph("  ", "Reaches " + stop + ", takes " + litres);
        } else if (plan.fill().steps().isEmpty()) {
            paragraph("  ", "CANNOT REACH " + stop + ".");
        } else {
            paragraph("  ", "CANNOT REACH " + stop + ". Filled as far as it goes: " + litres);
        }
        paragraph(
                "  ",
                "NEVER ABOVE " + shown.withUnit(shown.limit(plan.stop().neverAbove())) + " on its gauge "
                        + words.whyNeverAbove(plan) + ".");
        words.ofBottle(plan).forEach(sentence -> paragraph("  - ", sentence));
        out.append('\n');
    }

    private void steps() {
        if (plan.fill().steps().isEmpty()) {
            return;
        }
        paragraph("   Begin  ", "All supplies and the transfer valve shut. Open the bottle valve.");
        int number = 1;
        for (Step step : plan.fill().steps()) {
            step(number++, step);
        }
        paragraph(
                "   End    ",
                "Shut the bottle valve, vent the hose, take the bottle off. Warm gas settles lower: let it "
                        + "cool, read it again.");
        out.append('\n');
    }

    private void step(int number, Step step) {
        String lead = String.format(Locale.ROOT, "   [ ] %-2d ", number);
        paragraph(lead, "Open supply " + step.supply() + " slowly, then crack the transfer valve slowly.");
        GaugePressure end = step.bottle().after();
        String until = step.ends() == Ending.TARGET
                ? "Bottle at " + shown.withUnit(shown.limit(end))
                : "Gauges meet at about " + shown.withUnit(shown.expected(end));
        paragraph(" ".repeat(lead.length()), until + ": shut transfer valve, then supply " + step.supply() + ".");
    }

    private void skipped() {
        if (plan.fill().skipped().isEmpty()) {
            return;
        }
        for (Skipped skipped : plan.fill().skipped()) {
            paragraph(
                    "  ",
                    "Supply " + skipped.supply() + " (" + shown.withUnit(shown.found(skipped.reading()))
                            + ") stays shut: " + skipped.reason().words() + ".");
        }
        out.append('\n');
    }

    private void paragraph(String lead, String text) {
        out.append(Paragraph.of(lead, text));
    }
}
