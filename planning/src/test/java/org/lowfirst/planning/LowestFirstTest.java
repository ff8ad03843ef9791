package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;

/**
 * For identical bottles no order of opening the supplies, nor leaving some out, gives more fills than lowest first. Every order
 * of every choice of supplies for every bottle is tried on small banks.
 *
 * <p>That lowest first is best: common practice, no source; the search is the oracle.
 */
final class LowestFirstTest {

    private static final int MOST_FILLS = 4;

    static LongStream seeds() {
        return LongStream.range(0, 250);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noOtherOrderGivesMoreFills(long seed) {
        Random random = new Random(seed);
        Bench bench = requireNonNull(BenchOutcome.under(
                        Conditions.of(new IdealGas("oxygen", 0.0319988), Temperature.ofCelsius(20), ReferenceRule.EU))
                .bench());
        List<SupplyState> supplies = RandomBank.supplies(random, 3).stream()
                .map(s -> new SupplyState(s.name(), s.waterVolume(), s.reading()))
                .toList();
        BankState bank = BankState.of(supplies, bench.now());
        double start = 60 * random.nextDouble();
        BottleToFill bottle = Planned.bottle(
                "R1",
                8 + 20 * random.nextDouble(),
                start,
                start + 40 + 80 * random.nextDouble(),
                300,
                PressureUnit.BAR);
        Charge charge = Charge.of(bottle, bench.stop(bottle.target(), bottle.target()), bench.now());
        int lowestFirst =
                Counting.fillsLeft(bank, bench, charge, Habit.LOWEST_FIRST).complete();
        double[] volumes = new double[3];
        double[] contents = new double[3];
        for (RankedSupply supply : bank.supplies()) {
            volumes[supply.rank() - 1] = supply.waterVolume().cubicMetres();
            contents[supply.rank() - 1] = supply.contents().moles();
        }
        if (lowestFirst < MOST_FILLS) {
            boolean more = new EveryOrder(volumes, charge).canFill(contents, lowestFirst + 1);
            assertThat(more).isFalse();
        }
    }

    /** Tries every order of every choice of supplies; written apart from the planner's kernel. */
    private static final class EveryOrder {
        private final double[] volumes;
        private final Charge charge;

        EveryOrder(double[] volumes, Charge charge) {
            this.volumes = volumes;
            this.charge = charge;
        }

        boolean canFill(double[] contents, int bottles) {
            return bottles == 0 || next(contents, charge.start_mol(), 0, bottles);
        }

        private boolean next(double[] contents, double bottle, int used, int bottles) {
            for (int i = 0; i < volumes.length; i++) {
                if ((used & 1 << i) != 0 || contents[i] / volumes[i] <= bottle / charge.volume_m3()) {
                    continue;
                }
                double stop = charge.stop_molPerM3() * charge.volume_m3();
                double share = charge.volume_m3() / (charge.volume_m3() + volumes[i]);
                double equal = (contents[i] + bottle) * share;
                double after = Math.min(stop, equal);
                double[] left = contents.clone();
                left[i] -= after - bottle;
                boolean full = equal >= stop;
                if (full ? canFill(left, bottles - 1) : next(left, after, used | 1 << i, bottles)) {
                    return true;
                }
            }
            return false;
        }
    }
}
