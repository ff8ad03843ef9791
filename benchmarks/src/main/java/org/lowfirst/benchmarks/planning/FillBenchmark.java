package org.lowfirst.benchmarks.planning;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One fill from four supplies, real oxygen: the whole plan with steps, cap, fills left, the fullest-first habit and, where the
 * bank cannot finish, the exchanges that would.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class FillBenchmark {

    private static final List<SupplyState> BANK =
            List.of(supply("A", 62), supply("B", 118), supply("C", 155), supply("D", 190));

    private final Conditions conditions =
            Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(12), ReferenceRule.EU);
    private final FillPlanner planner = FillPlanner.under(conditions);
    private final FillRequest reaches = new FillRequest(BANK, bottle(150), GaugePressure.ofBar(200));
    private final FillRequest cannotReach = new FillRequest(BANK, bottle(198), GaugePressure.ofBar(230));

    @Benchmark
    public PlanOutcome wholePlanThatReaches() {
        return planner.plan(reaches);
    }

    @Benchmark
    public PlanOutcome wholePlanThatCannotReach() {
        return planner.plan(cannotReach);
    }

    @Benchmark
    public FillPlanner plannerForNewConditions() {
        return FillPlanner.under(conditions);
    }

    private static SupplyState supply(String name, double bar) {
        return new SupplyState(name, Volume.ofLitres(50), GaugePressure.ofBar(bar));
    }

    private static BottleToFill bottle(double target_bar) {
        return new BottleToFill(
                "R1",
                Volume.ofLitres(5),
                GaugePressure.ofBar(40),
                GaugePressure.ofBar(target_bar),
                GaugePressure.ofBar(232));
    }
}
