package org.lowfirst.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Volume;

/** Identities of a stage on seeded random vessels. */
final class StageConsistencyTest {

    private static final double RELATIVE = 1e-12;

    static LongStream seeds() {
        return LongStream.range(0, 400);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void massIsConservedWithHoseAndVent(long seed) {
        Draw draw = new Draw(seed);
        StageResult result = Stage.join(draw.supply, draw.hose, draw.bottle, draw.stop);
        Hose.Vented vented = result.hose().vent(new Density(42));
        double before = moles(draw.supply) + draw.hose.contents().moles() + moles(draw.bottle);
        double after = moles(result.supply())
                + vented.hose().contents().moles()
                + vented.lost().moles()
                + moles(result.bottle());
        assertThat(after).isEqualTo(before, within(RELATIVE * before));
        assertThat(moles(result.bottle()) - moles(draw.bottle))
                .isEqualTo(result.moved().moles(), within(RELATIVE * before));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theBottleNeverPassesTheStopNorTheSupply(long seed) {
        Draw draw = new Draw(seed);
        StageResult result = Stage.join(draw.supply, draw.hose, draw.bottle, draw.stop);
        double supply = rho(result.supply());
        double bottle = rho(result.bottle());
        switch (result.ending()) {
            case EQUAL -> {
                assertThat(bottle).isEqualTo(supply, within(RELATIVE * supply));
                assertThat(bottle).isLessThan(draw.stop.molesPerCubicMetre());
            }
            case TARGET -> {
                assertThat(bottle).isEqualTo(draw.stop.molesPerCubicMetre(), within(RELATIVE * bottle));
                assertThat(supply).isGreaterThanOrEqualTo(bottle * (1 - RELATIVE));
            }
            case NOTHING_MOVED -> assertThat(result.bottle()).isEqualTo(draw.bottle);
            default -> throw new AssertionError(result.ending());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void closingTheValveHalfWayAndOpeningItAgainChangesNothing(long seed) {
        Draw draw = new Draw(seed);
        StageResult once = Stage.join(draw.supply, draw.hose, draw.bottle, draw.stop);
        double from = rho(draw.bottle);
        double to = rho(once.bottle());
        StageResult parts = new StageResult(draw.supply, draw.hose, draw.bottle, Amount.NONE, Ending.NOTHING_MOVED);
        for (double share : new double[] {0.2, 0.55, 0.9}) {
            Density pause = new Density(from + share * (to - from));
            parts = Stage.join(parts.supply(), parts.hose(), parts.bottle(), pause);
        }
        parts = Stage.join(parts.supply(), parts.hose(), parts.bottle(), draw.stop);
        assertThat(moles(parts.bottle())).isEqualTo(moles(once.bottle()), within(RELATIVE * moles(once.bottle())));
        assertThat(moles(parts.supply())).isEqualTo(moles(once.supply()), within(RELATIVE * moles(once.supply())));
        assertThat(parts.ending()).isEqualTo(once.ending());
    }

    private static double moles(Vessel vessel) {
        return vessel.contents().moles();
    }

    private static double rho(Vessel vessel) {
        return vessel.density().molesPerCubicMetre();
    }

    private static final class Draw {
        final Vessel supply;
        final Hose hose;
        final Vessel bottle;
        final Density stop;

        Draw(long seed) {
            Random random = new Random(seed);
            supply = vessel(random, 2 + 60 * random.nextDouble(), 9000);
            bottle = vessel(random, 0.3 + 20 * random.nextDouble(), 6000);
            double litres = random.nextBoolean() ? 0.0 : 0.5 * random.nextDouble();
            hose = new Hose(Volume.ofLitres(litres), new Amount(litres * 1e-3 * 42));
            stop = new Density(7000 * random.nextDouble());
        }

        private static Vessel vessel(Random random, double litres, double highest_molPerM3) {
            return new Vessel(
                    Volume.ofLitres(litres), new Amount(litres * 1e-3 * highest_molPerM3 * random.nextDouble()));
        }
    }
}
