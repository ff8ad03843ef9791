package org.lowfirst.benchmarks.warm;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.warm.FastestFill;
import org.lowfirst.planning.warm.FillInTime;
import org.lowfirst.planning.warm.FillInTimeRequest;
import org.lowfirst.planning.warm.FillSchedule;
import org.lowfirst.planning.warm.GasNow;
import org.lowfirst.planning.warm.Pace;
import org.lowfirst.planning.warm.RatedBottle;
import org.lowfirst.planning.warm.StopAndSettle;
import org.lowfirst.planning.warm.StopPlan;
import org.lowfirst.planning.warm.StopRequest;
import org.lowfirst.planning.warm.TimedSupply;
import org.lowfirst.planning.warm.WarmBench;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.FlowArea;
import org.lowfirst.transfer.warm.Opening;
import org.lowfirst.transfer.warm.Rest;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.Sampling;
import org.lowfirst.transfer.warm.Settling;
import org.lowfirst.transfer.warm.Stop;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.Walls;
import org.lowfirst.transfer.warm.WarmFill;
import org.lowfirst.transfer.warm.WarmModel;
import org.lowfirst.transfer.warm.WarmSource;
import org.lowfirst.transfer.warm.WarmStage;
import org.lowfirst.transfer.warm.WarmState;
import org.lowfirst.transfer.warm.WarmVessel;
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
 * One warm fill of ten minutes: a 2.9 L aluminium bottle from 15 to 2,015 psi at 200 psi a minute out of a 49 L supply at 2,200 psi,
 * real gas, a point every five seconds; the same bottle settling afterwards; and whole plans.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WarmFillBenchmark {

    private final WarmModel model = WarmModel.oxygen();
    private final WarmBench bench = WarmBench.oxygen(Temperature.ofFahrenheit(70), ReferenceRule.US);
    private final WarmStage tenMinutes = stage();
    private final Rest settling = new Rest(
            model.fill(tenMinutes).orElseThrow().bottle(), bench.surroundings(), 0.01, new Sampling(60, 172_800));
    private final FillInTimeRequest cascade = cascade();
    private final StopRequest stopNow = new StopRequest(
            bottle(), new GasNow.Stated(GaugePressure.ofPsi(1800), Temperature.ofFahrenheit(100)), bench);

    @Benchmark
    public Answer<WarmFill> fillOfTenMinutes() {
        return model.fill(tenMinutes);
    }

    @Benchmark
    public Answer<Settling> settlingAfterwards() {
        return model.rest(settling);
    }

    @Benchmark
    public Answer<StopPlan> stopAndSettle() {
        return StopAndSettle.plan(stopNow);
    }

    @Benchmark
    public Answer<FillSchedule> cascadeOfFourOnAClock() {
        return FillInTime.plan(cascade);
    }

    @Benchmark
    public Answer<FastestFill> fastestWithinThreePerCent() {
        return FastestFill.find(cascade, 3.0);
    }

    private WarmStage stage() {
        return new WarmStage(
                new WarmSource.FromSupply(settled(WallMaterial.STEEL, 49, 2200)),
                settled(WallMaterial.ALUMINIUM, 2.9, 15),
                new Opening.SteadyRise(RiseRate.ofPsiPerMinute(200), FlowArea.ofBore(0.003, 0.8)),
                Stop.at(GaugePressure.ofPsi(2015)),
                bench.surroundings(),
                new Sampling(5, 3600));
    }

    private WarmState settled(WallMaterial material, double litres, double psi) {
        Volume water = Volume.ofLitres(litres);
        return WarmState.settled(
                        new WarmVessel(water, Walls.assumed(material, water, GaugePressure.ofPsi(2015))),
                        GaugePressure.ofPsi(psi),
                        bench.surroundings(),
                        model.equation())
                .orElseThrow();
    }

    private static RatedBottle bottle() {
        return RatedBottle.of("A", Volume.ofLitres(2.9), GaugePressure.ofPsi(2015), WallMaterial.ALUMINIUM, null)
                .orElseThrow();
    }

    private FillInTimeRequest cascade() {
        return new FillInTimeRequest(
                List.of(supply("1", 700), supply("2", 1300), supply("3", 1900), supply("4", 2400)),
                bottle(),
                GaugePressure.ofPsi(200),
                bench,
                Pace.steady(RiseRate.ofPsiPerMinute(200)));
    }

    private static TimedSupply supply(String name, double psi) {
        return TimedSupply.of(name, Volume.ofLitres(49), GaugePressure.ofPsi(psi), null, null)
                .orElseThrow();
    }
}
