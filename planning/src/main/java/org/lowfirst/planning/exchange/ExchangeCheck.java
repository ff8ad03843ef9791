package org.lowfirst.planning.exchange;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.study.BottleUse;
import org.lowfirst.planning.study.Checking;

/** Looks at a request before anything is computed. The limits: common practice, no source. */
final class ExchangeCheck {

    private final ExchangeRequest request;
    private final Checking checking = new Checking();

    ExchangeCheck(ExchangeRequest request) {
        this.request = request;
    }

    Checking look() {
        checking.number("number of kinds of bottles", request.usual().size(), 1, 100, "")
                .that(
                        request.bank().stream().anyMatch(supply -> !supply.heldBack()),
                        "bank",
                        "have a supply that may be sent back")
                .price("price of a supply", request.terms().contentPrice())
                .price("price of a delivery", request.terms().perDelivery())
                .price("price of a missed fill", request.terms().perMissedFill())
                .number("days from order to delivery", request.terms().leadDays(), 0, 365, "")
                .number("fills a day", request.rate().fillsPerDay(), 0.001, 300, "")
                .number("spread of the fills a day", request.rate().spread(), 0, 3, "");
        FillPlanner planner = FillPlanner.under(request.conditions());
        for (BottleUse use : request.usual()) {
            checking.share("share of bottle " + use.name(), use.share())
                    .pressure(
                            "lowest start reading of bottle " + use.name(),
                            use.startLowest(),
                            GaugePressure.ZERO,
                            use.target())
                    .pressure(
                            "highest start reading of bottle " + use.name(),
                            use.startHighest(),
                            use.startLowest(),
                            use.target());
            planned(planner, use, use.startLowest());
        }
        return checking;
    }

    /** Lets the planner of one fill look at supplies and bottle. */
    private void planned(FillPlanner planner, BottleUse use, GaugePressure start) {
        if (!checking.clear()) {
            return;
        }
        PlanOutcome outcome = planner.plan(new FillRequest(
                request.bank(),
                new BottleToFill(use.name(), use.waterVolume(), start, use.target(), use.servicePressure()),
                request.terms().fullSupply()));
        if (outcome instanceof PlanRefused refused) {
            checking.refused(refused);
        }
    }
}
