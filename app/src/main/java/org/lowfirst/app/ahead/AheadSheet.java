package org.lowfirst.app.ahead;

import java.util.List;
import java.util.Locale;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.ahead.DayAhead;
import org.lowfirst.planning.ahead.Forecast;

/** A forecast as a sheet for people, at most 80 columns wide. */
public final class AheadSheet {

    private static final int MOST_ROWS = 14;
    private static final int WIDTH = 40;

    private final LookedAhead looked;
    private final Forecast forecast;
    private final StringBuilder out = new StringBuilder();

    private AheadSheet(LookedAhead looked) {
        this.looked = looked;
        this.forecast = looked.forecast();
    }

    /** The sheet, each line ended. */
    public static String of(LookedAhead looked) {
        return new AheadSheet(looked).text();
    }

    private String text() {
        out.append(Paragraph.of(
                "",
                "AHEAD from " + looked.request().today() + ", if nothing is exchanged. Delivery "
                        + looked.request().ordering().leadDays() + " days after the order, "
                        + looked.request().ordering().reserveFills() + " fills in reserve."));
        out.append('\n');
        item("Fills left", forecast.fillsLeft().inWords());
        item("Days left", days(forecast.daysLeft()));
        item("Fills a week", String.format(Locale.ROOT, "%.1f in the coming four weeks", forecast.fillsPerWeek()));
        item("Order", forecast.order().inWords());
        item(
                "Ordered today",
                String.format(
                        Locale.ROOT,
                        "the reserve is touched before the delivery with a chance of %s %%, a bottle cannot be finished"
                                + " with one of %s %%.",
                        Chance.percent(forecast.order().chanceTooLate(), Locale.ENGLISH),
                        Chance.percent(forecast.order().chanceEmpty(), Locale.ENGLISH)));
        picture();
        out.append("\nBehind the numbers\n");
        looked.notes().forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private String days(Band days) {
        String words = days.inWords();
        return days.high90() >= forecast.longestDays() ? words + "; no farther is looked" : words;
    }

    private void item(String what, String words) {
        out.append(Paragraph.of(String.format(Locale.ROOT, "  %-14s ", what), words));
    }

    /** Fills left on the coming mornings: . the 90 % band, = the 50 % band, # the middle. */
    private void picture() {
        List<DayAhead> days = forecast.days();
        int most = Math.max(1, forecast.fillsLeft().high90());
        int step = Math.max(1, (days.size() + MOST_ROWS - 1) / MOST_ROWS);
        out.append("\n  fills left on a morning: . nine times in ten, = half of the time, # middle\n");
        for (int i = 0; i < days.size(); i += step) {
            DayAhead day = days.get(i);
            char[] bar = " ".repeat(WIDTH + 1).toCharArray();
            mark(bar, day.fillsLeft().low90(), day.fillsLeft().high90(), most, '.');
            mark(bar, day.fillsLeft().low50(), day.fillsLeft().high50(), most, '=');
            mark(bar, day.fillsLeft().middle(), day.fillsLeft().middle(), most, '#');
            out.append(String.format(
                    Locale.ROOT,
                    "  %s %4d  |%s\n",
                    day.date(),
                    day.fillsLeft().middle(),
                    new String(bar).stripTrailing()));
        }
    }

    private static void mark(char[] bar, int from, int to, int most, char sign) {
        for (int place = WIDTH * from / most; place <= WIDTH * to / most; place++) {
            bar[place] = sign;
        }
    }
}
