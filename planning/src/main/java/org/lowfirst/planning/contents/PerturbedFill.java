package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Fill;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.InOrderOutcome;
import org.lowfirst.planning.PlansInOrder;
import org.lowfirst.planning.Step;
import org.lowfirst.planning.SupplyState;

/** A request as it would be, were the truth off what was read by some errors. Mutable, confined to its owner. */
final class PerturbedFill {

    /** Above any stop, so that the valve is never shut; within what a plan accepts. */
    private static final GaugePressure NEVER_SHUT = GaugePressure.ofBar(399.0);

    private final FillRequest request;
    private final GaugePressure stop;
    private final Map<String, Double> readsTooHigh_Pa = new HashMap<>();
    private final Map<String, Double> willShowTooHigh_Pa = new HashMap<>();
    private final Map<String, Double> largerBy = new HashMap<>();
    private double bottleReadsTooHigh_Pa;
    private double bottleWillShowTooHigh_Pa;
    private double bottleLargerBy;

    /**
     * What the gauges would show, by supply [Pa].
     *
     * @param bottle the bottle's gauge after each supply that was opened
     * @param supply each supply's gauge after the fill
     */
    record Shown(Map<String, Double> bottle, Map<String, Double> supply) {}

    /**
     * @param stop where the valve is shut by the bottle's gauge
     */
    PerturbedFill(FillRequest request, GaugePressure stop) {
        this.request = request;
        this.stop = stop;
    }

    /** A lasting error of the supply's gauge: in the reading taken and in those to come. */
    void supplyGauge(String supply, double tooHigh_Pa) {
        supplyReading(supply, tooHigh_Pa);
        willShowTooHigh_Pa.merge(supply, tooHigh_Pa, Double::sum);
    }

    /** Scatter of the reading taken. */
    void supplyReading(String supply, double tooHigh_Pa) {
        readsTooHigh_Pa.merge(supply, tooHigh_Pa, Double::sum);
    }

    void supplyVolume(String supply, double share) {
        largerBy.merge(supply, share, Double::sum);
    }

    void bottleGauge(double tooHigh_Pa) {
        bottleReading(tooHigh_Pa);
        bottleWillShowTooHigh_Pa += tooHigh_Pa;
    }

    void bottleReading(double tooHigh_Pa) {
        bottleReadsTooHigh_Pa += tooHigh_Pa;
    }

    void bottleVolume(double share) {
        bottleLargerBy += share;
    }

    /** What the gauges would show after the fill; null when such a state cannot be planned with. */
    @Nullable
    Shown shown(FillPlanner planner) {
        Fill fill = last(planner, List.of(bottleUntilStop()));
        return fill == null ? null : shown(fill);
    }

    /**
     * What the bottle's gauge would show after a later fill, were the valve never shut [Pa]; null as above.
     *
     * @param number 1 for the next fill
     */
    @Nullable
    Double reach_Pa(FillPlanner planner, int number) {
        List<BottleToFill> bottles = new ArrayList<>();
        for (int i = 1; i < number; i++) {
            bottles.add(bottleUntilStop());
        }
        bottles.add(bottle(NEVER_SHUT));
        Fill fill = last(planner, bottles);
        return fill == null ? null : fill.finalReading().pascals() + bottleWillShowTooHigh_Pa;
    }

    private @Nullable Fill last(FillPlanner planner, List<BottleToFill> bottles) {
        InOrderOutcome outcome = planner.planInOrder(supplies(), numbered(bottles), null);
        return outcome instanceof PlansInOrder plans
                ? plans.plans().get(bottles.size() - 1).fill()
                : null;
    }

    private static List<BottleToFill> numbered(List<BottleToFill> bottles) {
        List<BottleToFill> named = new ArrayList<>();
        for (BottleToFill b : bottles) {
            named.add(new BottleToFill(
                    b.name() + " " + (named.size() + 1),
                    b.waterVolume(),
                    b.reading(),
                    b.target(),
                    b.servicePressure()));
        }
        return named;
    }

    private BottleToFill bottleUntilStop() {
        return bottle(new GaugePressure(stop.pascals() - bottleWillShowTooHigh_Pa));
    }

    private BottleToFill bottle(GaugePressure target) {
        BottleToFill b = request.bottle();
        return new BottleToFill(
                b.name(),
                new Volume(b.waterVolume().cubicMetres() * (1.0 + bottleLargerBy)),
                trueReading(b.reading(), bottleReadsTooHigh_Pa),
                target,
                NEVER_SHUT);
    }

    private List<SupplyState> supplies() {
        return request.supplies().stream().map(this::supply).toList();
    }

    private SupplyState supply(SupplyState s) {
        return new SupplyState(
                s.name(),
                new Volume(s.waterVolume().cubicMetres() * (1.0 + largerBy.getOrDefault(s.name(), 0.0))),
                trueReading(s.reading(), readsTooHigh_Pa.getOrDefault(s.name(), 0.0)),
                s.turn());
    }

    /** No cylinder is below the pressure of its surroundings, whatever its gauge may err. */
    private static GaugePressure trueReading(GaugePressure shown, double tooHigh_Pa) {
        return new GaugePressure(Math.max(0.0, shown.pascals() - tooHigh_Pa));
    }

    private Shown shown(Fill fill) {
        Map<String, Double> bottle = new HashMap<>();
        for (Step step : fill.steps()) {
            bottle.put(step.supply(), step.bottle().after().pascals() + bottleWillShowTooHigh_Pa);
        }
        Map<String, Double> supply = new HashMap<>();
        fill.bankAfter()
                .forEach(s ->
                        supply.put(s.name(), s.reading().pascals() + willShowTooHigh_Pa.getOrDefault(s.name(), 0.0)));
        return new Shown(bottle, supply);
    }
}
