package org.lowfirst.benchmarks.gas;

import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Density of oxygen from pressure: straight from the equation, on one isotherm, from the planning table. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class DensityBenchmark {

    private static final Temperature BENCH = new Temperature(294.26);

    private final CaloricEquation oxygen = Oxygen.schmidtWagner();
    private final Isotherm table = oxygen.isotherm(BENCH).orElseThrow();
    private final Isotherm line = oxygen.directIsotherm(BENCH).orElseThrow();
    private final RandomStates states = new RandomStates();
    private final double[] rho_molPerM3 = new double[RandomStates.COUNT];

    public DensityBenchmark() {
        for (int i = 0; i < rho_molPerM3.length; i++) {
            rho_molPerM3[i] = table.density_molPerM3(states.p_Pa[i]);
        }
    }

    @Benchmark
    public double directAtAnyTemperature() {
        int i = states.next();
        return oxygen.density(new AbsolutePressure(states.p_Pa[i]), new Temperature(states.T_K[i]))
                .orElseThrow()
                .molesPerCubicMetre();
    }

    @Benchmark
    public double directOnOneIsotherm() {
        return line.density_molPerM3(states.p_Pa[states.next()]);
    }

    @Benchmark
    public double fromTheTable() {
        return table.density_molPerM3(states.p_Pa[states.next()]);
    }

    @Benchmark
    public double pressureFromTheTable() {
        return table.pressure_Pa(rho_molPerM3[states.next()]);
    }

    @Benchmark
    public Isotherm makingATable() {
        return oxygen.isotherm(new Temperature(states.T_K[states.next()])).orElseThrow();
    }
}
