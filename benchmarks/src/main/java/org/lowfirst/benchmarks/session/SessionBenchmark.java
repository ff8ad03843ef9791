package org.lowfirst.benchmarks.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.session.SessionBottle;
import org.lowfirst.planning.session.SessionOutcome;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionRequest;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Ten seeded sessions of the design's sizes: six bottles on four supplies, proven, and twenty on eight within a bound. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class SessionBenchmark {

    private static final int SESSIONS = 10;

    /** Bottles x supplies. */
    @Param({"6x4", "20x8"})
    String size = "6x4";

    /** How large the bottles are; 1 = 2 to 12 L. */
    @Param({"1.5", "4"})
    double scale = 1.5;

    private final SessionPlanner planner =
            SessionPlanner.under(Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(20), ReferenceRule.EU));
    private final List<SessionRequest> requests = new ArrayList<>();

    @Setup
    public void draw() {
        int bottles = Integer.parseInt(size.substring(0, size.indexOf('x')));
        int supplies = Integer.parseInt(size.substring(size.indexOf('x') + 1));
        requests.clear();
        for (int seed = 0; seed < SESSIONS; seed++) {
            requests.add(request(seed, supplies, bottles));
        }
    }

    private SessionRequest request(int seed, int supplies, int bottles) {
        Random random = new Random(seed);
        List<SupplyState> bank = new ArrayList<>();
        for (int s = 0; s < supplies; s++) {
            bank.add(
                    new SupplyState("S" + s, Volume.ofLitres(50), GaugePressure.ofBar(60 + 140 * random.nextDouble())));
        }
        List<SessionBottle> wanted = new ArrayList<>();
        for (int b = 0; b < bottles; b++) {
            double start = 10 + 80 * random.nextDouble();
            double target = Math.max(start + 5, 110 + 60 * random.nextDouble());
            wanted.add(new SessionBottle(new BottleToFill(
                    "R" + b,
                    Volume.ofLitres(scale * (2 + 10 * random.nextDouble())),
                    GaugePressure.ofBar(start),
                    GaugePressure.ofBar(target),
                    GaugePressure.ofBar(300))));
        }
        return new SessionRequest(bank, wanted);
    }

    /** All ten, one after another. */
    @Benchmark
    public List<SessionOutcome> tenSessions() {
        return requests.stream().map(planner::plan).toList();
    }
}
