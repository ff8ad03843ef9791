package org.lowfirst.benchmarks.gas;

import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Pressure;
import org.lowfirst.gas.Quantities;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Reading what people type. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ParsingBenchmark {

    private String text = "2,015 psi";

    @Benchmark
    public Parsed<Pressure> pressure() {
        return Quantities.pressure(text);
    }
}
