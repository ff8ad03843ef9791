package org.lowfirst.planning.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;

/** Banks, bottles and sessions drawn from a seed, and short ways to plan them. */
final class Sessions {

    static final Temperature BENCH = Temperature.ofCelsius(20);

    private Sessions() {}

    static SessionPlanner oxygen() {
        return planner(Oxygen.schmidtWagner());
    }

    static SessionPlanner ideal() {
        return planner(new IdealGas("oxygen", 0.0319988));
    }

    static SessionPlanner planner(EquationOfState gas) {
        return SessionPlanner.under(Conditions.of(gas, BENCH, ReferenceRule.EU));
    }

    static SupplyState supply(String name, double litres, double bar) {
        return new SupplyState(name, Volume.ofLitres(litres), GaugePressure.ofBar(bar));
    }

    static SessionBottle bottle(String name, double litres, double bar, double target) {
        return new SessionBottle(new BottleToFill(
                name,
                Volume.ofLitres(litres),
                GaugePressure.ofBar(bar),
                GaugePressure.ofBar(target),
                GaugePressure.ofBar(300)));
    }

    static SessionBottle withFloor(SessionBottle bottle, int priority, double floor) {
        return new SessionBottle(bottle.bottle(), priority, GaugePressure.ofBar(floor));
    }

    /**
     * @param oneSize whether all supplies have 50 L
     * @param oneTarget whether all bottles are wanted at 150 bar
     * @param scale how large the bottles are, 1 = 2 to 12 L
     */
    static SessionRequest random(
            long seed, int supplies, int bottles, boolean oneSize, boolean oneTarget, double scale) {
        Random random = new Random(seed);
        List<SupplyState> bank = new ArrayList<>();
        for (int s = 0; s < supplies; s++) {
            bank.add(supply("S" + s, oneSize ? 50 : 10 + 40 * random.nextDouble(), 60 + 140 * random.nextDouble()));
        }
        List<SessionBottle> wanted = new ArrayList<>();
        for (int b = 0; b < bottles; b++) {
            double start = 10 + 80 * random.nextDouble();
            double target = Math.max(start + 5, 110 + 60 * random.nextDouble());
            wanted.add(bottle("R" + b, scale * (2 + 10 * random.nextDouble()), start, oneTarget ? 150 : target));
        }
        return new SessionRequest(bank, wanted);
    }

    static SessionPlan plan(SessionPlanner planner, SessionRequest request) {
        return plan(planner, request, Effort.USUAL);
    }

    static SessionPlan plan(SessionPlanner planner, SessionRequest request, Effort effort) {
        SessionOutcome outcome = planner.plan(request, effort, SessionWatch.PATIENT);
        assertThat(outcome).isInstanceOf(SessionPlan.class);
        return (SessionPlan) outcome;
    }
}
