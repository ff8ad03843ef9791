package org.lowfirst.app.exchange;

import java.util.List;
import java.util.Locale;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.exchange.ExchangeOption;
import org.lowfirst.planning.exchange.OrderAt;

/** Exchange advice as a sheet for people, at most 80 columns wide. */
public final class ExchangeSheet {

    private static final int MOST_OPTIONS = 12;
    private static final int LONGEST_NAMES = 22;

    private ExchangeSheet() {}

    /** The sheet, each line ended. */
    public static String of(ExchangeDone done) {
        StringBuilder out = new StringBuilder();
        out.append("EXCHANGE ADVICE\n");
        out.append(Paragraph.of("  ", done.advice().inWords(done.bank().units())));
        String row = "  %-22s %10s %9s %9s %10s  %s\n";
        out.append('\n')
                .append(String.format(
                        Locale.ROOT, row, "send back now", "litres", "worth", "cost now", "year over", "fills left"));
        List<ExchangeOption> options = done.advice().options();
        for (ExchangeOption option : options.subList(0, Math.min(MOST_OPTIONS, options.size()))) {
            out.append(String.format(
                    Locale.ROOT,
                    row,
                    names(option),
                    String.format(Locale.ROOT, "%,.0f", done.bank().standardLitres(option.returned())),
                    money(option.worthReturned()),
                    money(option.costNow()),
                    money(option.aboveBest()),
                    option.fillsLeft().complete()));
        }
        if (options.size() > MOST_OPTIONS) {
            out.append("  ").append(options.size() - MOST_OPTIONS).append(" dearer ones are left out.\n");
        }
        String order = "  %-26s %14s %14s %14s\n";
        out.append('\n')
                .append(String.format(
                        Locale.ROOT, order, "order when so many are left", "chance missed", "gas cost", "missed cost"));
        for (OrderAt at : done.advice().orders()) {
            out.append(String.format(
                    Locale.ROOT,
                    order,
                    at.fillsLeft() + (at.fillsLeft() == done.advice().orderAt() ? "  cheapest" : ""),
                    Chance.percent(at.chanceMissed(), Locale.ENGLISH) + " %",
                    money(at.gasCost()),
                    money(at.missedCost())));
        }
        out.append("\nBehind the numbers\n");
        List<String> notes = done.notes();
        notes.subList(1, notes.size()).forEach(note -> out.append(Paragraph.of("  - ", note)));
        return out.toString();
    }

    private static String names(ExchangeOption option) {
        String names = option.waits() ? "nothing, wait" : String.join(" and ", option.supplies());
        return names.length() <= LONGEST_NAMES ? names : names.substring(0, LONGEST_NAMES - 1) + "~";
    }

    private static String money(double value) {
        return String.format(Locale.ROOT, "%,.2f", value + 0.0);
    }
}
