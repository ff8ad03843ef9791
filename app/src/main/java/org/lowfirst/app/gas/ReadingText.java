package org.lowfirst.app.gas;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.warm.SameGas;

/** A reading at other temperatures as a small table for people, at most 80 columns wide. */
public final class ReadingText {

    private final ReadingAnswer answer;
    private final TypedReading typed;
    private final StringBuilder out = new StringBuilder();

    private ReadingText(ReadingAnswer answer) {
        this.answer = answer;
        this.typed = answer.typed();
    }

    /** The table, each line ended. */
    public static String of(ReadingAnswer answer) {
        return new ReadingText(answer).text();
    }

    private String text() {
        out.append("OXYGEN: the gauge reads ")
                .append(written(typed.reading()))
                .append(", the gas is at ")
                .append(written(typed.at()))
                .append(".\n\n");
        row("", "real gas", "ideal gas");
        List<Parsed.Read<Temperature>> temperatures = typed.readsAt();
        for (int i = 0; i < temperatures.size(); i++) {
            row(
                    "reads at " + written(temperatures.get(i)),
                    reading(answer.real().readings().get(i).reading()),
                    reading(answer.ideal().readings().get(i).reading()));
        }
        contents(answer.real().contents(), answer.ideal().contents());
        fullness(answer.real().full(), answer.ideal().full());
        out.append('\n');
        answer.notes().forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private void contents(SameGas.@Nullable Contents real, SameGas.@Nullable Contents ideal) {
        if (real == null || ideal == null) {
            return;
        }
        out.append('\n');
        row("free gas", litres(real), litres(ideal));
        row("", cubicFeet(real), cubicFeet(ideal));
        row(
                "amount",
                Figures.four(real.amount().moles()) + " mol",
                Figures.four(ideal.amount().moles()) + " mol");
        row(
                "mass",
                Figures.four(real.mass().kilograms()) + " kg",
                Figures.four(ideal.mass().kilograms()) + " kg");
    }

    private void fullness(SameGas.@Nullable Fullness real, SameGas.@Nullable Fullness ideal) {
        Parsed.Read<GaugePressure> rated = typed.rated();
        if (real == null || ideal == null || rated == null) {
            return;
        }
        out.append('\n');
        row("full", Figures.percent(real.percent()), Figures.percent(ideal.percent()));
        row("reads at " + reference(), reading(real.atReference()), reading(ideal.atReference()));
        row("a full one at " + written(typed.at()), reading(real.full()), reading(ideal.full()));
        out.append(Paragraph.of(
                "  ",
                "Full is " + written(rated) + " at " + reference()
                        + (typed.rules() == ReferenceRule.US ? " (US rules)." : " (European rules).")));
    }

    private String reference() {
        return typed.rules() == ReferenceRule.US ? "70 F" : "15 C";
    }

    private String reading(GaugePressure reading) {
        return Figures.reading(reading, typed.pressureUnit());
    }

    private static String litres(SameGas.Contents contents) {
        return Figures.four(contents.freeVolume().toLitres()) + " L";
    }

    private static String cubicFeet(SameGas.Contents contents) {
        return Figures.four(contents.freeVolume().to(VolumeUnit.CUBIC_FOOT)) + " cu ft";
    }

    private static String written(Parsed.Read<?> typed) {
        return Numerals.grouped(typed.number()) + " " + typed.unit();
    }

    private void row(String name, String real, String ideal) {
        out.append(String.format(Locale.ROOT, "  %-22s %14s %14s", name, real, ideal)
                        .stripTrailing())
                .append('\n');
    }
}
