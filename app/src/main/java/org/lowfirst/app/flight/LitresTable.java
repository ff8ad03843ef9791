package org.lowfirst.app.flight;

import java.util.Locale;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.planning.flight.FlightPlan;

/** Litres leg by leg, with what is left, then what margin and reserve add. */
final class LitresTable {

    private static final int LONGEST_NAME = 24;

    private final PlannedFlight flight;
    private final FlightPlan plan;
    private final FlightUnits units;
    private final StringBuilder out = new StringBuilder();

    LitresTable(PlannedFlight flight) {
        this.flight = flight;
        this.plan = flight.plan();
        this.units = flight.file().units();
    }

    String text() {
        row("leg", "h:mm", "at " + units.altitudeSymbol(), "litres", "left");
        double left = plan.usableLitres();
        row("(start)", "0:00", units.number(flight.legs().get(0).from()), "", Litres.number(left));
        for (LegRow leg : flight.legs()) {
            left -= leg.litres();
            row(
                    leg.name(),
                    HoursAndMinutes.near(leg.to_s()),
                    units.number(leg.to()),
                    Litres.number(leg.litres()),
                    left < 0.0 ? "none" : Litres.number(left));
        }
        double minutes = flight.file().request().reserve().toMillis() / 60_000.0;
        String flow = minutes > 0.0
                ? String.format(
                        Locale.ROOT,
                        ", %s min at %.1f L/min",
                        Numerals.grouped(minutes),
                        plan.reserveLitres() / minutes)
                : "";
        sum("flight", plan.usedLitres());
        sum("margin, " + Numerals.grouped(flight.file().request().marginPercent()) + " %", plan.marginLitres());
        sum("reserve" + flow, plan.reserveLitres());
        sum("needed", plan.neededLitres());
        return out.toString();
    }

    private void sum(String name, double litres) {
        out.append(String.format(Locale.ROOT, "  %-42s %9s\n", name, Litres.number(litres)));
    }

    private void row(String name, String clock, String altitude, String litres, String left) {
        String shown = name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "~";
        String line = String.format(Locale.ROOT, "  %-24s %6s %10s %9s %9s", shown, clock, altitude, litres, left);
        out.append(line.stripTrailing()).append('\n');
    }
}
