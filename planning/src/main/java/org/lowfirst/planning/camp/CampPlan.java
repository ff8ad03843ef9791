package org.lowfirst.planning.camp;

import java.util.List;
import java.util.OptionalInt;
import org.lowfirst.planning.ahead.Band;

/**
 * What a camp needs.
 *
 * @param fillsWanted bottles brought during the camp
 * @param options from one supply up to the number that is enough
 * @param supplies least number that finishes every bottle with the chance wanted; empty when the largest bank does not
 * @param days length of the camp
 * @param chanceWanted the chance wanted
 */
public record CampPlan(Band fillsWanted, List<CampOption> options, OptionalInt supplies, int days, double chanceWanted)
        implements CampOutcome {

    public CampPlan {
        options = List.copyOf(options);
    }

    /** One or two sentences for people. */
    public String inWords() {
        CampOption last = options.get(options.size() - 1);
        String wanted = "Fills wanted: " + fillsWanted.inWords() + ". ";
        if (supplies.isEmpty()) {
            return wanted
                    + "Even %d supplies finish every bottle with a chance of %d %% only. Please plan a delivery or lower the target."
                            .formatted(last.supplies(), Math.round(100 * last.chanceAll()));
        }
        return wanted
                + "Take %d %s: every bottle can be finished with a chance of %d %%; days covered: %s of %d."
                        .formatted(
                                last.supplies(),
                                last.supplies() == 1 ? "supply" : "supplies",
                                Math.round(100 * last.chanceAll()),
                                last.daysCovered().inWords(),
                                days);
    }
}
