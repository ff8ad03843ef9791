package org.lowfirst.planning.camp;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.lowfirst.planning.study.Objection;

/** Works out how many supplies a camp needs: the same camps are lived through with one supply, with two, and so on. */
public final class PlanningACamp {

    private static final int LARGEST_BANK = 64;

    private PlanningACamp() {}

    /** The plan, or what is wrong with the request. */
    public static CampOutcome plan(CampRequest request) {
        Optional<Objection> objection = new CampCheck(request).look().first();
        if (objection.isPresent()) {
            return new CampOutcome.Refused(objection.get());
        }
        Camps camps = new Camps(request);
        List<CampOption> options = new ArrayList<>();
        for (int supplies = 1; supplies <= LARGEST_BANK; supplies++) {
            CampOption option = camps.with(supplies);
            options.add(option);
            if (option.chanceAll() >= request.chanceWanted()) {
                return new CampPlan(
                        camps.fillsWanted(), options, OptionalInt.of(supplies), request.days(), request.chanceWanted());
            }
        }
        return new CampPlan(camps.fillsWanted(), options, OptionalInt.empty(), request.days(), request.chanceWanted());
    }
}
