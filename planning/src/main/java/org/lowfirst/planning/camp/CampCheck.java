package org.lowfirst.planning.camp;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.study.BottleUse;
import org.lowfirst.planning.study.Checking;

/** Looks at a request before anything is computed. The limits: common practice, no source. */
final class CampCheck {

    private static final GaugePressure HIGHEST_READING = GaugePressure.ofBar(400.0);

    private final CampRequest request;
    private final Checking checking = new Checking();

    CampCheck(CampRequest request) {
        this.request = request;
    }

    Checking look() {
        PlanRefused refused = FillPlanner.under(request.conditions()).refused();
        if (refused != null) {
            return checking.refused(refused);
        }
        checking.number("number of days", request.days(), 1, 100, "")
                .number("number of pilots", request.pilots(), 1, 500, "")
                .number("fills of a pilot on a day that is flown", request.fillsPerPilotPerDay(), 0.01, 10, "")
                .number("chance that a day is flown", request.flyableShare(), 0.01, 1, "")
                .number("chance wanted that every bottle can be finished", request.chanceWanted(), 0.01, 0.999, "")
                .number("number of kinds of bottles", request.bottles().size(), 1, 100, "")
                .supplyVolume("water volume of the supplies", request.supplyVolume())
                .pressure("reading of the supplies", request.supplyReading(), GaugePressure.ofBar(2), HIGHEST_READING)
                .names("bottle", request.bottles().stream().map(BottleUse::name).toList());
        checking.number(
                "number of fills to be expected",
                (double) request.days() * request.pilots() * request.fillsPerPilotPerDay(),
                0,
                5_000,
                "");
        FillPlanner planner = FillPlanner.under(request.conditions());
        request.bottles().forEach(use -> bottle(use, planner));
        return checking;
    }

    private void bottle(BottleUse use, FillPlanner planner) {
        String of = " of bottle " + use.name();
        checking.bottleVolume("water volume" + of, use.waterVolume())
                .pressure("service pressure" + of, use.servicePressure(), GaugePressure.ofBar(1), HIGHEST_READING)
                .pressure("target" + of, use.target(), GaugePressure.ofBar(1), use.servicePressure())
                .pressure("lowest start reading" + of, use.startLowest(), GaugePressure.ZERO, use.target())
                .pressure("highest start reading" + of, use.startHighest(), use.startLowest(), use.target())
                .share("share" + of, use.share());
        if (checking.clear()) {
            GaugePressure stop =
                    planner.stop(use.target(), use.servicePressure()).reading();
            checking.that(
                    stop.compareTo(request.supplyReading()) < 0,
                    "target" + of,
                    "be below the reading of the supplies, or they can never finish it");
        }
    }
}
