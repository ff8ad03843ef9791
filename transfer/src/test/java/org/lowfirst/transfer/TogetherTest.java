package org.lowfirst.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Volume;

/** That two supply valves open together level the supplies and waste the fuller one's pressure: common practice, no source. */
final class TogetherTest {

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @Test
    void theSuppliesLevelAmongThemselves() {
        List<Vessel> levelled = Together.levelled(List.of(vessel(50, 100), vessel(30, 300)));
        assertThat(levelled.get(0).contents().moles()).isEqualTo(250, within(1e-12));
        assertThat(levelled.get(1).contents().moles()).isEqualTo(150, within(1e-12));
    }

    @Test
    void theyLevelEvenWhenTheBottleGetsNothing() {
        TogetherResult result =
                Together.join(List.of(vessel(50, 100), vessel(50, 200)), Hose.NONE, vessel(5, 40), new Density(9000));
        assertThat(result.ending()).isEqualTo(Ending.NOTHING_MOVED);
        assertThat(result.supplies())
                .allSatisfy(s -> assertThat(s.contents().moles()).isEqualTo(150, within(1e-12)));
    }

    @Test
    void theyActAsOneSupplyOfTheirJointVolume() {
        TogetherResult result =
                Together.join(List.of(vessel(50, 100), vessel(50, 200)), Hose.NONE, vessel(5, 5), new Density(9000));
        assertThat(result.ending()).isEqualTo(Ending.EQUAL);
        assertThat(result.bottle().contents().moles()).isEqualTo(305.0 / 105 * 5, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keptApartTheyBringTheBottleHigherAndMassIsConservedEitherWay(long seed) {
        Random random = new Random(seed);
        Vessel low = vessel(20 + 40 * random.nextDouble(), 100 + 100 * random.nextDouble());
        Vessel high = vessel(20 + 40 * random.nextDouble(), 250 + 100 * random.nextDouble());
        Vessel bottle = vessel(1 + 9 * random.nextDouble(), 2 * random.nextDouble());
        Density stop = new Density(1e5);
        TogetherResult together = Together.join(List.of(low, high), Hose.NONE, bottle, stop);
        boolean lowIsLower = low.density().compareTo(high.density()) < 0;
        StageResult first = Stage.join(lowIsLower ? low : high, Hose.NONE, bottle, stop);
        StageResult second = Stage.join(lowIsLower ? high : low, Hose.NONE, first.bottle(), stop);
        assertThat(second.bottle().contents())
                .isGreaterThanOrEqualTo(together.bottle().contents());
        double before = low.contents().moles()
                + high.contents().moles()
                + bottle.contents().moles();
        double after = together.bottle().contents().moles()
                + together.supplies().stream()
                        .mapToDouble(s -> s.contents().moles())
                        .sum();
        assertThat(after).isEqualTo(before, within(1e-12 * before));
    }

    private static Vessel vessel(double litres, double moles) {
        return new Vessel(Volume.ofLitres(litres), new Amount(moles));
    }
}
