package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/** Finds out why one bottle comes before another by trying the other way round. */
final class Reasons {

    private static final int MOST_TRIED = 24;
    private static final int MOST_GIVEN = 8;

    private final Setting setting;
    private final Problem problem;
    private final Scored plan;
    private final double step_mol;

    Reasons(Setting setting, Problem problem, Scored plan, double step_mol) {
        this.setting = setting;
        this.problem = problem;
        this.plan = plan;
        this.step_mol = step_mol;
    }

    List<OrderReason> all() {
        List<OrderReason> found = new ArrayList<>();
        Layout layout = plan.candidate().layout();
        int tried = 0;
        for (int s = 0; s < layout.supplies(); s++) {
            for (int k = 0; k + 1 < layout.on(s) && tried < MOST_TRIED && found.size() < MOST_GIVEN; k++) {
                tried++;
                OrderReason reason = reason(layout, s, k);
                if (reason != null) {
                    found.add(reason);
                }
            }
        }
        return found;
    }

    private @Nullable OrderReason reason(Layout layout, int s, int k) {
        Layout swapped = layout.swapped(s, k);
        Replay replay = Replay.of(problem, swapped);
        int missed = replay.firstShort();
        double lost_mol = Math.max(0.0, replay.loss_mol() - plan.candidate().loss_mol());
        String first = name(layout.bottle(s, k));
        String second = name(layout.bottle(s, k + 1));
        String supply = setting.open().get(s).name();
        if (missed >= 0) {
            double short_Pa = setting.gas().reading(layout.stop(missed)).pascals()
                    - setting.gas().reading(replay.q[missed]).pascals();
            return new OrderReason(
                    first, second, supply, name(missed), new GaugePressure(short_Pa), new Amount(lost_mol), 0);
        }
        int changes = Scored.of(setting, problem, new Candidate(swapped, replay.loss_mol()))
                        .calendar()
                        .changes
                - plan.calendar().changes;
        return changes > 0 || lost_mol > 0.2 * step_mol
                ? new OrderReason(first, second, supply, null, null, new Amount(lost_mol), changes)
                : null;
    }

    private String name(int b) {
        return setting.request().bottles().get(b).bottle().name();
    }
}
