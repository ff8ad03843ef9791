package org.lowfirst.benchmarks.gas;

import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StatePoint;
import org.lowfirst.gas.Transport;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Moves of the kernel point that simulations make. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class StatePointBenchmark {

    private final CaloricEquation oxygen = Oxygen.schmidtWagner();
    private final Transport transport = Oxygen.lemmonJacobsen();
    private final StatePoint point = oxygen.newPoint();
    private final RandomStates states = new RandomStates();
    private final double[] rho_molPerM3 = new double[RandomStates.COUNT];
    private final double[] u_JPerMol = new double[RandomStates.COUNT];
    private final double[] s_JPerMolK = new double[RandomStates.COUNT];

    public StatePointBenchmark() {
        for (int i = 0; i < RandomStates.COUNT; i++) {
            point.moveToPressure(states.p_Pa[i], states.T_K[i]);
            rho_molPerM3[i] = point.rho_molPerM3();
            u_JPerMol[i] = point.u_JPerMol();
            s_JPerMolK[i] = point.s_JPerMolK();
        }
    }

    @Benchmark
    public double toDensityAndTemperature() {
        int i = states.next();
        point.moveTo(rho_molPerM3[i], states.T_K[i]);
        return point.p_Pa() + point.u_JPerMol() + point.cv_JPerMolK() + point.dpdT_PaPerK() + point.dudrho_JM3PerMol2();
    }

    @Benchmark
    public boolean toDensityAndEnergyFromHalfAKelvinAway() {
        int i = states.next();
        return point.moveToEnergy(rho_molPerM3[i], u_JPerMol[i], states.T_K[i] + 0.5);
    }

    @Benchmark
    public boolean toPressureAndEntropyFromTenKelvinAway() {
        int i = states.next();
        return point.moveToPressureEntropy(states.p_Pa[i], s_JPerMolK[i], states.T_K[i] + 10.0);
    }

    @Benchmark
    public double viscosityAndConductivity() {
        return transport.viscosity_PaS(point) + transport.conductivity_WPerMK(point);
    }
}
