package org.lowfirst.app.camp;

import java.util.Locale;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.camp.CampOption;

/** A camp as a sheet for people, at most 80 columns wide. */
public final class CampSheet {

    private static final int MOST_ROWS = 20;

    private CampSheet() {}

    /** The sheet, each line ended. */
    public static String of(CampDone camp) {
        StringBuilder out = new StringBuilder();
        ShownReadings shown = new ShownReadings(camp.units().pressure());
        out.append(Paragraph.of(
                "",
                "CAMP of " + Numerals.count(camp.request().days(), "day") + " with "
                        + Numerals.count(camp.request().pilots(), "pilot") + ". Supplies of "
                        + camp.units().show(camp.request().supplyVolume()) + " at "
                        + shown.withUnit(shown.given(camp.request().supplyReading())) + "."));
        out.append('\n').append(Paragraph.of("  ", camp.plan().inWords()));
        String row = "  %8s %10s %16s %16s %12s\n";
        out.append('\n')
                .append(String.format(
                        Locale.ROOT, row, "supplies", "litres", "fills made", "days covered", "every bottle"));
        int skip = Math.max(0, camp.plan().options().size() - MOST_ROWS);
        for (CampOption option :
                camp.plan().options().subList(skip, camp.plan().options().size())) {
            out.append(String.format(
                    Locale.ROOT,
                    row,
                    option.supplies(),
                    String.format(
                            Locale.ROOT,
                            "%,.0f",
                            camp.request()
                                    .conditions()
                                    .gas()
                                    .freeVolume(option.gas(), camp.standard())
                                    .toLitres()),
                    band(option.fillsMade()),
                    band(option.daysCovered()),
                    Chance.percentDown(option.chanceAll(), Locale.ENGLISH) + " %"));
        }
        out.append(Paragraph.of(
                "  ",
                "Middle, and in brackets from where to where it lies nine times in ten."
                        + (skip > 0 ? " Smaller numbers are left out." : "")));
        out.append("\nBehind the numbers\n");
        camp.notes().forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private static String band(Band band) {
        return band.middle() + " (" + band.low90() + " to " + band.high90() + ")";
    }
}
