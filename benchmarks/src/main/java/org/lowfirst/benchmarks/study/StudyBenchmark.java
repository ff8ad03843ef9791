package org.lowfirst.benchmarks.study;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.study.Alternative;
import org.lowfirst.planning.study.BenchTemperature;
import org.lowfirst.planning.study.BottleUse;
import org.lowfirst.planning.study.Demand;
import org.lowfirst.planning.study.ExchangeHabit;
import org.lowfirst.planning.study.Extent;
import org.lowfirst.planning.study.Prices;
import org.lowfirst.planning.study.Site;
import org.lowfirst.planning.study.StudyOutcome;
import org.lowfirst.planning.study.StudyRequest;
import org.lowfirst.planning.study.StudyWatch;
import org.lowfirst.planning.study.Studying;
import org.lowfirst.planning.study.SupplyKind;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The study of the design's figures: six bank sizes, 1,000 runs, 10 years and one of warming up, 150 fills a year. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 3)
@Fork(1)
public class StudyBenchmark {

    @Param({"1", "2"})
    int threads;

    private final StudyRequest request = request();

    @Benchmark
    public StudyOutcome sixBankSizesThousandRunsTenYears() {
        return Studying.study(request, threads, StudyWatch.NONE);
    }

    private static StudyRequest request() {
        SupplyKind supply = new SupplyKind(
                "50 L", Volume.ofLitres(50), GaugePressure.ofBar(190), GaugePressure.ofBar(205), 60.0, 0.25);
        List<Alternative> banks = IntStream.rangeClosed(1, 6)
                .mapToObj(n -> new Alternative("bank of " + n, n, supply, ExchangeHabit.oneAtATime()))
                .toList();
        return new StudyRequest(
                Site.of(
                        Oxygen.schmidtWagner(),
                        new BenchTemperature(Temperature.ofCelsius(10), 10, 200, 4),
                        ReferenceRule.EU.temperature()),
                new Demand(
                        150,
                        0.2,
                        List.of(0.1, 0.2, 0.8, 1.2, 1.6, 1.7, 1.7, 1.6, 1.3, 0.9, 0.4, 0.1),
                        List.of(0.3, 0.3, 0.5, 0.5, 1.0, 2.2, 2.2),
                        List.of(bottle("small", 2, 0.4), bottle("middle", 3, 0.4), bottle("large", 5, 0.2))),
                new Prices(35.0, 0.0, 20.0, 90.0, 10.0),
                banks,
                Extent.of(10, 1_000, 1L));
    }

    private static BottleUse bottle(String name, double litres, double share) {
        return new BottleUse(
                name,
                Volume.ofLitres(litres),
                GaugePressure.ofBar(200),
                GaugePressure.ofBar(150),
                GaugePressure.ofBar(20),
                GaugePressure.ofBar(90),
                share);
    }
}
