package org.lowfirst.app.ahead;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.ahead.AheadRequest;
import org.lowfirst.planning.ahead.Alert;
import org.lowfirst.planning.ahead.Forecast;
import org.lowfirst.planning.ahead.PlannedEvent;

/**
 * A forecast with what it was made from.
 *
 * @param request the bank and its use
 * @param forecast how long it lasts
 * @param units in which the sheet answers
 */
public record LookedAhead(AheadRequest request, Forecast forecast, ShownUnits units) {

    /** Whether an order is due today or late. */
    public boolean orderIsDue() {
        Alert alert = forecast.order().alert();
        return alert == Alert.NOW || alert == Alert.LATE;
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        List<String> notes = new ArrayList<>(List.of(
                forecast.knowledge().inWords(),
                "Half of the time a number lies in its likely band, nine times in ten not outside the other, if the use"
                        + " goes on as it was.",
                "All fills ahead are counted at "
                        + units.show(request.conditions().bench())
                        + ". Weather, leaks and holidays that nobody planned are not in it."));
        request.events().stream()
                .filter(event -> !event.date().plusDays(event.days()).isBefore(request.today()))
                .map(LookedAhead::said)
                .forEach(notes::add);
        return notes;
    }

    private static String said(PlannedEvent event) {
        String fills = new BigDecimal(event.fills())
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
        return event.days() == 1
                ? "Planned: " + event.name() + " on " + event.date() + ", " + fills + " more fills."
                : "Planned: " + event.name() + " from " + event.date() + " on, " + fills + " more fills in "
                        + event.days() + " days.";
    }
}
