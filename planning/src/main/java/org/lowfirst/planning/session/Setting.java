package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.BenchGas;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.StopReading;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;

/**
 * A checked request with its gas counted.
 *
 * @param gas the gas at this bench
 * @param request what was asked
 * @param open the supplies that may be opened, in their order of use
 * @param stops where each bottle's valve is shut, as listed
 */
record Setting(BenchGas gas, SessionRequest request, List<SupplyState> open, List<StopReading> stops) {

    private static final int MOST_BOTTLES = 40;
    private static final int MOST_SUPPLIES = 16;
    private static final double HALF_A_BAR_PA = 50_000;

    /** As a single fill looks at the bank: those used first, then the others, each by rank. */
    static final Comparator<SupplyState> ORDER_OF_USE =
            Comparator.comparing((SupplyState s) -> s.turn() != Turn.FIRST).thenComparing(SupplyState::reading);

    Setting {
        open = List.copyOf(open);
        stops = List.copyOf(stops);
    }

    static Setting of(BenchGas gas, SessionRequest request) {
        List<SupplyState> open = new ArrayList<>(request.supplies());
        open.removeIf(SupplyState::heldBack);
        open.sort(ORDER_OF_USE);
        List<StopReading> stops =
                request.bottles().stream().map(b -> gas.stop(b.bottle())).toList();
        return new Setting(gas, request, open, stops);
    }

    /** The first thing wrong with a request; null when it can be planned. */
    static @Nullable PlanRefused wrongWith(BenchGas gas, SessionRequest request) {
        if (request.bottles().size() > MOST_BOTTLES) {
            return new PlanRefused.TooMany("bottles", request.bottles().size(), MOST_BOTTLES);
        }
        if (request.supplies().size() > MOST_SUPPLIES) {
            return new PlanRefused.TooMany("supplies", request.supplies().size(), MOST_SUPPLIES);
        }
        PlanRefused wrong = gas.wrongWith(
                request.supplies(),
                request.bottles().stream().map(SessionBottle::bottle).toList(),
                request.fullSupply());
        for (int b = 0; wrong == null && b < request.bottles().size(); b++) {
            wrong = wrongFloor(gas, request.bottles().get(b));
        }
        return wrong;
    }

    private static @Nullable PlanRefused wrongFloor(BenchGas gas, SessionBottle asked) {
        GaugePressure floor = asked.floor();
        if (floor == null) {
            return null;
        }
        GaugePressure stop = gas.stop(asked.bottle()).reading();
        if (floor.compareTo(GaugePressure.ZERO) < 0) {
            return new PlanRefused.PressureOutOfRange(
                    "floor of bottle " + asked.bottle().name(), floor, GaugePressure.ZERO, stop);
        }
        return floor.compareTo(stop) > 0
                ? new PlanRefused.FloorAboveStop(asked.bottle().name(), floor, stop)
                : null;
    }

    Problem problem() {
        return problem(open);
    }

    /** The session on another bank; its supplies in their order of use. */
    Problem problem(List<SupplyState> bank) {
        int bottles = request.bottles().size();
        double[] volume = new double[bottles];
        double[] start = new double[bottles];
        double[] wish = new double[bottles];
        double[] floor = new double[bottles];
        int[] priority = new int[bottles];
        for (int b = 0; b < bottles; b++) {
            SessionBottle asked = request.bottles().get(b);
            volume[b] = asked.bottle().waterVolume().cubicMetres();
            start[b] = gas.density_molPerM3(asked.bottle().reading());
            wish[b] = gas.density_molPerM3(stops.get(b).reading());
            GaugePressure least = asked.floor();
            floor[b] = least == null ? wish[b] : Math.min(wish[b], gas.density_molPerM3(least));
            priority[b] = asked.priority();
        }
        return new Problem(
                        new Problem.Vessels(
                                bank.stream()
                                        .mapToDouble(s -> s.waterVolume().cubicMetres())
                                        .toArray(),
                                bank.stream()
                                        .mapToDouble(s -> gas.density_molPerM3(s.reading()))
                                        .toArray()),
                        new Problem.Vessels(volume, start),
                        wish,
                        floor,
                        priority,
                        new Problem.Vessels(new double[] {gas.hose_m3()}, new double[] {gas.ambientDensity_molPerM3()}))
                .usingFirst(
                        (int) bank.stream().filter(s -> s.turn() == Turn.FIRST).count());
    }

    /** Half a bar in the largest supply [mol]: less than a gauge shows. */
    double gasStep_mol() {
        GaugePressure highest = GaugePressure.ZERO;
        for (StopReading stop : stops) {
            highest = stop.reading().compareTo(highest) > 0 ? stop.reading() : highest;
        }
        double largest_m3 = open.stream()
                .mapToDouble(s -> s.waterVolume().cubicMetres())
                .max()
                .orElse(0.0);
        double low = gas.density_molPerM3(new GaugePressure(Math.max(0.0, highest.pascals() - HALF_A_BAR_PA)));
        double high = gas.density_molPerM3(
                new GaugePressure(Math.max(0.0, highest.pascals() - HALF_A_BAR_PA) + HALF_A_BAR_PA));
        return largest_m3 * (high - low);
    }
}
