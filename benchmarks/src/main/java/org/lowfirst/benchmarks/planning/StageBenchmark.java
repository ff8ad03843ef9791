package org.lowfirst.benchmarks.planning;

import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.Stage;
import org.lowfirst.transfer.StageResult;
import org.lowfirst.transfer.Vessel;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One isothermal stage of real oxygen. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class StageBenchmark {

    private final Isotherm line =
            Oxygen.schmidtWagner().isotherm(Temperature.ofCelsius(20)).orElseThrow();
    private final AbsolutePressure high = AbsolutePressure.ofBar(150);
    private final AbsolutePressure low = AbsolutePressure.ofBar(10);
    private final Vessel supply = Vessel.at(Volume.ofLitres(50), high, line);
    private final Vessel bottle = Vessel.at(Volume.ofLitres(5), low, line);

    @Benchmark
    public StageResult betweenAmounts() {
        return Stage.join(supply, Hose.NONE, bottle);
    }

    @Benchmark
    public AbsolutePressure fromReadingsToReadings() {
        Vessel from = Vessel.at(supply.waterVolume(), high, line);
        Vessel to = Vessel.at(bottle.waterVolume(), low, line);
        return Stage.join(from, Hose.NONE, to).bottle().pressure(line);
    }
}
