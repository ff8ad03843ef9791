package org.lowfirst.planning.session;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.session.Calendar.StageAt;

/** How long the stages of a layout take at a pace. */
final class Reckoning implements Calendar.StageTimes {

    private final double[][] open_s;
    private final SessionPace pace;

    Reckoning(Setting setting, Problem problem, Layout layout) {
        pace = setting.request().pace();
        open_s = new double[layout.supplies()][];
        double[] r = problem.supply_molPerM3.clone();
        double[] q = problem.bottle_molPerM3.clone();
        for (int s = 0; s < layout.supplies(); s++) {
            open_s[s] = new double[layout.on(s)];
            for (int k = 0; k < layout.on(s); k++) {
                int b = layout.bottle(s, k);
                GaugePressure before = setting.gas().reading(q[b]);
                if (!Problem.at(q[b], layout.stop(b)) && problem.gives(r[s], s, q[b])) {
                    problem.stage(r, q, s, b, layout.stop(b));
                }
                double rise_Pa = setting.gas().reading(q[b]).pascals() - before.pascals();
                open_s[s][k] = rise_Pa / pace.rise_PaPerS();
            }
        }
    }

    @Override
    public double open_s(StageAt stage) {
        return open_s[stage.supply()][stage.place()];
    }

    @Override
    public double change_s(boolean hose, boolean supply) {
        return (hose ? pace.hoseChange_s() : 0.0) + (supply ? pace.supplyChange_s() : 0.0);
    }

    @Override
    public double rest_s() {
        return pace.rest_s();
    }
}
