package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.SimulatedBench.Truth;

/** One thing goes wrong at each of many benches: how often the right cause stands after eight days, and nobody else is blamed. */
class RightCauseStatisticsTest {

    private static final int BENCHES = 100;

    /** What goes wrong, whose verdict tells, and who has part in it. */
    enum Trouble {
        LEAK("B", "B"),
        WRONG_VOLUME("M2", "M2"),
        WRONG_VALVE("B", "B or C"),
        UNRECORDED_FILL("C", "C");

        final String tells;
        final String involved;

        Trouble(String tells, String involved) {
            this.tells = tells;
            this.involved = involved;
        }
    }

    private static BenchHistory history(long seed, Trouble trouble) {
        SimulatedBench bench = new SimulatedBench(seed);
        bench.supply("A", 50, 90);
        Truth b = bench.supply("B", 50, 150);
        Truth c = bench.supply("C", 50, 198);
        Truth known = bench.bottle("M1", 5, 1.0);
        Truth other = bench.bottle("M2", 5, trouble == Trouble.WRONG_VOLUME ? 1.7 : 1.0);
        for (int day = 0; day < 14; day++) {
            bench.readBank();
            if (day % 5 == 2) {
                bench.fill(known, 40, 140);
            }
            bench.pass(1);
        }
        happen(bench, trouble, b, c, known);
        for (int day = 0; day < 8; day++) {
            bench.readBank();
            if (trouble == Trouble.WRONG_VOLUME && day % 2 == 0) {
                bench.fill(other, 30, 140);
            }
            bench.pass(1);
        }
        return bench.reconcile();
    }

    private static void happen(SimulatedBench bench, Trouble trouble, Truth b, Truth c, Truth bottle) {
        if (trouble == Trouble.LEAK) {
            b.leakPerDay = 0.01;
        } else if (trouble == Trouble.UNRECORDED_FILL) {
            c.amount_mol -= 20;
        } else if (trouble == Trouble.WRONG_VALVE) {
            bottle.amount_mol *= 0.3;
            bench.facts.add(new ReadingTaken(bench.settled(bottle), Since.MAYBE_USED));
            bench.stage(b, c, bottle, 140);
            bench.pass(0.5);
        }
    }

    private static boolean right(Verdict verdict, Trouble trouble) {
        return switch (trouble) {
            case LEAK -> verdict.code() == VerdictCode.LIKELY_LEAK;
            case WRONG_VOLUME ->
                verdict.cause() == Cause.BOTTLE_VOLUME && verdict.code().accuses();
            case WRONG_VALVE -> verdict.cause() == Cause.WRONG_VALVE && "C".equals(verdict.other());
            case UNRECORDED_FILL -> verdict.cause() == Cause.UNRECORDED_FILL;
        };
    }

    private static boolean blamesOthers(Map<String, Verdict> standing, Trouble trouble) {
        return standing.values().stream()
                .anyMatch(v -> v.code().accuses()
                        && !trouble.involved.contains(v.cylinder())
                        && !trouble.involved.contains(Objects.requireNonNullElse(v.other(), "nobody")));
    }

    @ParameterizedTest
    @EnumSource
    void theRightCauseStandsAndNobodyElseIsBlamed(Trouble trouble) {
        int right = 0;
        int blamed = 0;
        for (int i = 0; i < BENCHES; i++) {
            Map<String, Verdict> standing = history(5000 + i, trouble).standing();
            Verdict verdict = Objects.requireNonNull(standing.get(trouble.tells));
            right += right(verdict, trouble) ? 1 : 0;
            blamed += blamesOthers(standing, trouble) ? 1 : 0;
        }
        Proportion found = new Proportion(right, BENCHES);
        assertThat(found.atLeast99()).as(found.toString()).isGreaterThan(0.90);
        assertThat(blamed).isLessThanOrEqualTo(1);
    }
}
