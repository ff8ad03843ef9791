package org.lowfirst.app.gas;

import java.util.Locale;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.gas.Temperature;

/** Why valves are opened slowly, for people, at most 80 columns wide. */
public final class SnapText {

    private SnapText() {}

    /** The text, each line ended. */
    public static String of(SnapAnswer answer) {
        StringBuilder out = new StringBuilder();
        out.append(Paragraph.of(
                "",
                "A valve snapped open: oxygen at "
                        + Numerals.grouped(answer.supply().number()) + " "
                        + answer.supply().unit() + " rushes into a dead end that was at "
                        + Numerals.grouped(answer.at().number()) + " "
                        + answer.at().unit() + " and the pressure of the surroundings."));
        out.append('\n');
        out.append(row("pressure ratio", Figures.four(answer.opening().ratio())));
        out.append(row("real gas", both(answer.opening().realGas())));
        out.append(row("constant ratio 1.4", both(answer.opening().constantGamma()) + "  (as common tables have it)"));
        out.append('\n');
        answer.notes().forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private static String both(Temperature temperature) {
        return String.format(Locale.ROOT, "%,6.0f C %,6.0f F", temperature.toCelsius(), temperature.toFahrenheit());
    }

    private static String row(String name, String value) {
        return String.format(Locale.ROOT, "  %-20s %s\n", name, value);
    }
}
