package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lowfirst.planning.contents.BenchHistory.DatedVerdict;

/**
 * Months of a bench in use: three supplies read every morning, one or two fills every third day from four bottles, warm bottles
 * and cold supplies after each stage, volumes and gauges within their stated errors. Nothing is wrong at any of them.
 */
class BenchInUseStatisticsTest {

    private static final int BENCHES = 200;
    private static final int SUPPLIES = 3;

    private static SimulatedBench month(long seed) {
        SimulatedBench bench = new SimulatedBench(seed);
        Random chance = new Random(31 * seed + 1);
        bench.supply("A", 50, 90);
        bench.supply("B", 50, 150);
        bench.supply("C", 50, 198);
        bench.bottle("M1", 5, 1);
        bench.bottle("M2", 3, 1);
        bench.bottle("M3", 2.9, 1);
        bench.bottle("M4", 4.6, 1);
        for (int day = 0; day < 30; day++) {
            bench.readBank();
            for (int fills = day % 3 == 1 ? 1 + chance.nextInt(2) : 0; fills > 0; fills--) {
                bench.fill(bench.bottles.get(chance.nextInt(4)), 20 + 60 * chance.nextDouble(), 140);
            }
            bench.pass(1);
        }
        return bench;
    }

    @Test
    void aTightBenchIsHardlyEverAccusedAndItsContentsLieWithinTheirSpread() {
        Set<String> accused = new HashSet<>();
        int within = 0;
        for (int i = 0; i < BENCHES; i++) {
            SimulatedBench bench = month(i);
            BenchHistory history = bench.reconcile();
            assertThat(history.refused()).isEmpty();
            for (DatedVerdict dated : history.verdicts()) {
                if (dated.verdict().code().accuses()) {
                    accused.add(i + " " + dated.verdict().cylinder());
                }
            }
            for (SimulatedBench.Truth supply : bench.supplies) {
                ContentsEstimate estimate =
                        Objects.requireNonNull(history.contents().get(supply.name()));
                within += Math.abs(supply.amount_mol - estimate.mean_mol()) <= estimate.halfWidth95_mol() ? 1 : 0;
            }
        }
        Proportion alarms = new Proportion(accused.size(), BENCHES * SUPPLIES);
        assertThat(alarms.atMost99()).as(alarms + " " + accused).isLessThan(0.01);
        Proportion covered = new Proportion(within, BENCHES * SUPPLIES);
        assertThat(covered.share()).as(covered.toString()).isBetween(0.925, 0.975);
    }
}
