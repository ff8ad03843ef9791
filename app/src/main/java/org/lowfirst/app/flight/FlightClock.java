package org.lowfirst.app.flight;

import java.util.Locale;
import java.util.Optional;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.planning.flight.FlightPlan;

/** How long the gas lasts: last moment to start down, when the reserve is touched, when the bottles are down. */
final class FlightClock {

    private final PlannedFlight flight;
    private final FlightPlan plan;
    private final StringBuilder out = new StringBuilder();

    FlightClock(PlannedFlight flight) {
        this.flight = flight;
        this.plan = flight.plan();
    }

    String text() {
        out.append("How long it lasts (h:mm after the start, flown as planned)\n");
        String rate = flight.file().units().descent();
        if (plan.turn().isEmpty()
                && plan.reserveTouched().isEmpty()
                && plan.emptied().isEmpty()) {
            out.append(Paragraph.of(
                    "  - ",
                    "The reserve is not touched, nor when the flight is broken off at any moment and goes down at "
                            + rate + "."));
        } else {
            line(
                    plan.turn(),
                    "last moment to start down at " + rate + " with the reserve whole",
                    "Started down at " + rate + " at any moment, the reserve stays whole.");
            line(plan.reserveTouched(), "the reserve is touched", "The reserve is not touched.");
            line(
                    plan.emptied(),
                    "the bottles are down to what is to stay in them",
                    "The bottles do not come down to what is to stay in them.");
        }
        plan.highestFlowMinutes()
                .ifPresent(minutes -> out.append(Paragraph.of(
                        "  - ",
                        "At the highest flow of the flight all usable gas lasts "
                                + HoursAndMinutes.before(minutes * 60.0) + " h.")));
        return out.toString();
    }

    private void line(Optional<Double> seconds, String what, String never) {
        String lead = seconds.map(at -> String.format(Locale.ROOT, "  %5s  ", HoursAndMinutes.before(at)))
                .orElse("  - ");
        out.append(Paragraph.of(lead, seconds.isPresent() ? what : never));
    }
}
