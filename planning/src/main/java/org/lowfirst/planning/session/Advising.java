package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.SupplyState;

/** Looks for a common floor or an exchange that makes more bottles ready. */
final class Advising {

    private static final int HALVINGS = 14;
    private static final int ROUNDS = 60;
    private static final long NODES = 40_000;

    private final Setting setting;
    private final Problem problem;

    Advising(Setting setting, Problem problem) {
        this.setting = setting;
        this.problem = problem;
    }

    MoreReady moreReady() {
        return new MoreReady(commonFloor(), exchanges());
    }

    private @Nullable GaugePressure commonFloor() {
        double low = 0.0;
        for (double start : problem.bottle_molPerM3) {
            low = Math.max(low, start);
        }
        double high = problem.top_molPerM3;
        if (low >= high || !allReady(low)) {
            return null;
        }
        double lowest = low;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (allReady(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low > lowest ? setting.gas().reading(low) : null;
    }

    private boolean allReady(double most_molPerM3) {
        Problem lower = problem.wantingAtMost(most_molPerM3);
        return new SmallSession(lower, quick()).possible(Choice.of(lower.wish_molPerM3));
    }

    private List<MoreReady.Exchange> exchanges() {
        GaugePressure full = setting.request().fullSupply();
        List<MoreReady.Exchange> found = new ArrayList<>();
        for (int s = 0; full != null && s < setting.open().size(); s++) {
            List<SupplyState> bank = new ArrayList<>(setting.open());
            SupplyState old = bank.get(s);
            bank.set(s, new SupplyState(old.name(), old.waterVolume(), full));
            bank.sort(Setting.ORDER_OF_USE);
            int ready = new LargeSession(setting.problem(bank), quick(), ROUNDS).quickReady();
            found.add(new MoreReady.Exchange(old.name(), ready));
        }
        found.sort(Comparator.comparingInt(MoreReady.Exchange::ready).reversed());
        return found;
    }

    private static Budget quick() {
        return new Budget(NODES, SessionWatch.PATIENT, new SessionWatch.SoFar(0, 0, org.lowfirst.gas.Amount.NONE, 0));
    }
}
