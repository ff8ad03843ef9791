package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.study.Checking;

/** Looks at a request before anything is computed. The limits: common practice, no source. */
final class AheadCheck {

    private static final GaugePressure HIGHEST_READING = GaugePressure.ofBar(400.0);
    private static final int MOST_DAYS = 40_000;
    private static final int MOST_SUPPLIES = 64;

    private final AheadRequest request;
    private final AheadAssumptions assumptions;
    private final Checking checking = new Checking();

    AheadCheck(AheadRequest request, AheadAssumptions assumptions) {
        this.request = request;
        this.assumptions = assumptions;
    }

    Checking look() {
        PlanRefused refused = FillPlanner.under(request.conditions()).refused();
        if (refused != null) {
            return checking.refused(refused);
        }
        bank();
        history();
        request.usual().forEach(this::fill);
        LocalDate oldest = request.today().minusDays(assumptions.longestHistory_d());
        checking.that(
                !request.usual().isEmpty()
                        || !Tally.recent(request.history().fills(), oldest).isEmpty(),
                "forecast",
                "have at least one usual bottle or one past fill to go by");
        request.events()
                .forEach(event -> checking.number("fills of event " + event.name(), event.fills(), 0, 1_000, "")
                        .number("days of event " + event.name(), event.days(), 1, 100, ""));
        guess();
        return checking.number("days from order to delivery", request.ordering().leadDays(), 0, 365, "")
                .number("reserve of fills", request.ordering().reserveFills(), 0, 1_000, "");
    }

    private void bank() {
        List<SupplyState> open =
                request.bank().stream().filter(supply -> !supply.heldBack()).toList();
        checking.number("number of supplies that may be opened", open.size(), 1, MOST_SUPPLIES, "");
        for (SupplyState supply : open) {
            checking.supplyVolume("water volume of supply " + supply.name(), supply.waterVolume())
                    .pressure(
                            "reading of supply " + supply.name(),
                            supply.reading(),
                            GaugePressure.ZERO,
                            HIGHEST_READING);
        }
    }

    private void history() {
        UseHistory history = request.history();
        checking.number("days of the history", history.days(), 0, MOST_DAYS, "")
                .that(
                        history.days() == 0
                                || !history.from().plusDays(history.days()).isAfter(request.today()),
                        "history",
                        "end before today");
        LocalDate end = history.from().plusDays(history.days());
        for (FilledOn filled : history.fills()) {
            checking.that(
                    !filled.date().isBefore(history.from()) && filled.date().isBefore(end),
                    "fill of " + filled.date(),
                    "lie on a day of the history");
            fill(filled.fill());
        }
    }

    private void fill(UsualFill fill) {
        String of = " of bottle " + fill.bottle();
        checking.bottleVolume("water volume" + of, fill.waterVolume())
                .pressure("service pressure" + of, fill.servicePressure(), GaugePressure.ofBar(1), HIGHEST_READING)
                .pressure("start reading" + of, fill.start(), GaugePressure.ZERO, HIGHEST_READING)
                .pressure("target" + of, fill.target(), GaugePressure.ZERO, HIGHEST_READING);
    }

    private void guess() {
        UseGuess guess = request.guess();
        if (guess == null) {
            return;
        }
        checking.number("guess of fills a year", guess.fillsPerYear(), 0.1, 100_000, "")
                .number("weight of the guess", guess.weighsFills(), 0.1, 10_000, "fills")
                .number("number of weekday factors", guess.weekdays().size(), 7, 7, "")
                .number("number of month factors", guess.months().size(), 12, 12, "");
        guess.weekdays().forEach(factor -> checking.number("factor of a weekday", factor, 1e-6, 1e6, ""));
        guess.months().forEach(factor -> checking.number("factor of a month", factor, 1e-6, 1e6, ""));
    }
}
