package org.lowfirst.planning.ahead;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;
import org.lowfirst.planning.study.kernel.BankLevels;
import org.lowfirst.planning.study.kernel.Draws;

/** The bank of today and the kinds of fills that may come, as numbers. Mutable, used by one thread. */
final class BankAhead {

    /** Counting ends here. */
    static final int MOST_FILLS = 9_999;

    private final BankLevels now;
    private final BankLevels later;
    private final List<Double> bottle_m3 = new ArrayList<>();
    private final List<Double> start_molPerM3 = new ArrayList<>();
    private final List<Double> stop_molPerM3 = new ArrayList<>();

    BankAhead(Conditions conditions, List<SupplyState> bank, List<UsualFill> kinds) {
        Isotherm line = conditions.gas().isotherm(conditions.bench()).orElseThrow();
        FillPlanner planner = FillPlanner.under(conditions);
        List<SupplyState> open = SupplyState.inOrderOfUse(bank);
        double hose_m3 = conditions.hose().cubicMetres();
        double purged_molPerM3 = density_molPerM3(line, GaugePressure.ZERO, conditions);
        now = new BankLevels(open.size(), hose_m3, purged_molPerM3);
        later = new BankLevels(open.size(), hose_m3, purged_molPerM3);
        for (int place = 0; place < open.size(); place++) {
            SupplyState supply = open.get(place);
            now.put(place, supply.waterVolume().cubicMetres(), density_molPerM3(line, supply.reading(), conditions));
        }
        now.useFirst((int)
                open.stream().filter(supply -> supply.turn() == Turn.FIRST).count());
        now.rank();
        for (UsualFill kind : kinds) {
            GaugePressure stop =
                    planner.stop(kind.target(), kind.servicePressure()).reading();
            bottle_m3.add(kind.waterVolume().cubicMetres());
            start_molPerM3.add(density_molPerM3(line, kind.start(), conditions));
            stop_molPerM3.add(density_molPerM3(line, stop, conditions));
        }
    }

    private static double density_molPerM3(Isotherm line, GaugePressure reading, Conditions conditions) {
        return line.density_molPerM3(reading.pascals() + conditions.ambient().pascals());
    }

    /** Bottles finished, drawn one after another, before the first that cannot be. */
    int fillsLeft(Urn urn, Draws draws) {
        later.copy(now);
        urn.refill();
        for (int done = 0; done < MOST_FILLS; done++) {
            int kind = urn.draw(draws);
            double start = start_molPerM3.get(kind);
            double stop = stop_molPerM3.get(kind);
            if (start < stop && !later.fill(bottle_m3.get(kind), start, stop, BankLevels.NO_BOOSTER)) {
                return done;
            }
        }
        return MOST_FILLS;
    }
}
