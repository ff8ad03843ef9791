package org.lowfirst.benchmarks.contents;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.contents.BenchHistory;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.FillSpread;
import org.lowfirst.planning.contents.FillSpreads;
import org.lowfirst.planning.contents.FillUncertainty;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeAccuracy;
import org.lowfirst.planning.contents.GaugeScale;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;
import org.lowfirst.planning.contents.Reconciliation;
import org.lowfirst.planning.contents.Surroundings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Working through the facts of a bench, and spreading one plan; real oxygen. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ReconciliationBenchmark {

    private static final double TEMPERATURE_K = 1.0;

    private final BusyJournal journal = new BusyJournal(1000);
    private final Reconciliation reconciliation =
            new Reconciliation(Surroundings.standard(Oxygen.schmidtWagner()), ContentsAssumptions.standard());

    private final Conditions conditions =
            Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(20), ReferenceRule.EU);
    private final FillPlan plan = (FillPlan) FillPlanner.under(conditions)
            .plan(new FillRequest(
                    List.of(supply("A", 62), supply("B", 118), supply("C", 190)),
                    new BottleToFill(
                            "R",
                            Volume.ofLitres(5),
                            GaugePressure.ofBar(40),
                            GaugePressure.ofBar(150),
                            GaugePressure.ofBar(200))));
    private final FillSpreads spreads = FillSpreads.under(conditions, TEMPERATURE_K, ContentsAssumptions.standard());
    private final FillUncertainty known = FillUncertainty.oneGauge(
            List.of("A", "B", "C"), gauge("manifold"), gauge("bottle"), VolumeOrigin.STAMPED, TEMPERATURE_K);

    private static SupplyState supply(String name, double bar) {
        return new SupplyState(name, Volume.ofLitres(50), GaugePressure.ofBar(bar));
    }

    private static Gauge gauge(String name) {
        return Gauge.of(name, GaugeScale.of(315, 1, PressureUnit.BAR), new GaugeAccuracy.OfFullScale(1.6));
    }

    @Benchmark
    public BenchHistory thousandFacts() {
        return reconciliation.reconcile(journal.cylinders, journal.gauges, journal.facts);
    }

    @Benchmark
    public FillSpread spreadOfOnePlan() {
        return spreads.spread(plan, known);
    }
}
