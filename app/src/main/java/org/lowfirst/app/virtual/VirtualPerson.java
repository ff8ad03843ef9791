package org.lowfirst.app.virtual;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;

/**
 * Somebody who follows the guide at a virtual bench: moves the valve each step names, shuts the transfer valve when the bottle's
 * gauge shows the target or what it must never pass, or when the needle has long stood still, waits, reads, enters. Not
 * thread-safe.
 */
public final class VirtualPerson {

    private static final Duration MOVING_A_VALVE = Duration.ofSeconds(20);
    private static final Duration EARLY = Duration.ofSeconds(30);
    private static final Duration AWAY = Duration.ofMinutes(45);

    private final VirtualBench bench;
    private final VirtualGauge onSupplies;
    private final VirtualGauge onBottle;
    private final double thermometer_K;
    private final Patience patience;
    private final SplittableRandom chance;

    /** @param thermometer_K standard deviation of a reading of the thermometer [K] */
    public VirtualPerson(
            VirtualBench bench,
            VirtualGauge onSupplies,
            VirtualGauge onBottle,
            double thermometer_K,
            Patience patience,
            SplittableRandom chance) {
        this.bench = bench;
        this.onSupplies = onSupplies;
        this.onBottle = onBottle;
        this.thermometer_K = thermometer_K;
        this.patience = patience;
        this.chance = chance;
    }

    public StatedPressure readSupply(String name) {
        return onSupplies.read(bench.supplyPressure(name), chance);
    }

    public StatedPressure readBottle(GaugePressure truth) {
        return onBottle.read(truth, chance);
    }

    /** To a tenth. */
    public StatedTemperature readThermometer(TemperatureUnit unit) {
        double read = new Temperature(bench.room().kelvin() + thermometer_K * chance.nextGaussian()).to(unit);
        return new StatedTemperature(BigDecimal.valueOf(read).setScale(1, RoundingMode.HALF_EVEN), unit);
    }

    /** Fills a bottle from the first step to the last. */
    public FillSeen fill(CylinderTruth bottle, FillOrder order, Guidance guidance, Slip slip) {
        Work work = new Work(bottle, order, guidance, slip);
        NextStep step = guidance.start(order);
        while (step != null) {
            step = work.act(step);
        }
        return work.seen();
    }

    /** One fill under way. */
    private final class Work {

        private final CylinderTruth bottle;
        private final FillOrder order;
        private final Guidance guidance;
        private final List<StageSeen> stages = new ArrayList<>();
        private final Temperature room = bench.room();
        private Slip slip;
        private boolean cameToStop;
        private @Nullable FillSeen seen;

        Work(CylinderTruth bottle, FillOrder order, Guidance guidance, Slip slip) {
            this.bottle = bottle;
            this.order = order;
            this.guidance = guidance;
            this.slip = slip;
        }

        FillSeen seen() {
            FillSeen ended = seen;
            if (ended == null) {
                throw new IllegalStateException("The fill is not over.");
            }
            return ended;
        }

        @Nullable
        NextStep act(NextStep step) {
            Phase phase = step.position().phase();
            if (phase == Phase.ENTER_READING) {
                return enter(step);
            }
            if (phase == Phase.FINISH) {
                return finish(step);
            }
            if (phase == Phase.WATCH) {
                return watch(step);
            }
            move(phase, step.supply());
            bench.pass(MOVING_A_VALVE);
            return guidance.done(step);
        }

        private void move(Phase phase, String supply) {
            switch (phase) {
                case CONNECT -> bench.connect(bottle);
                case OPEN_BOTTLE -> bench.openBottle();
                case OPEN_SUPPLY -> bench.openSupply(supply);
                case CRACK_TRANSFER -> bench.openTransfer();
                case SHUT_TRANSFER -> bench.shutTransfer();
                case SHUT_SUPPLY -> bench.shutSupply();
                case SHUT_BOTTLE -> bench.shutBottle();
                default -> {}
            }
        }

        private NextStep watch(NextStep step) {
            Slip now = slip;
            slip = Slip.NONE;
            if (now == Slip.IS_CALLED_AWAY) {
                bench.pass(AWAY);
                return guidance.comeBack(bench.valves());
            }
            cameToStop = bench.passUntil(stop(step), now == Slip.SHUTS_EARLY ? EARLY : patience.open());
            return guidance.done(step);
        }

        /** True pressure at which the needle comes to the target or to what it must never pass. */
        private GaugePressure stop(NextStep step) {
            GaugePressure target = order.target().gauge();
            GaugePressure shown = target.compareTo(step.neverAbove()) < 0 ? target : step.neverAbove();
            return onBottle.truthAt(shown);
        }

        private @Nullable NextStep enter(NextStep step) {
            bench.pass(patience.settle());
            StageSeen stage = new StageSeen(
                    step.supply(),
                    cameToStop,
                    bench.now(),
                    bench.room(),
                    bench.bottlePressure(),
                    bench.supplyPressure(step.supply()),
                    readBottle(bench.bottlePressure()),
                    readSupply(step.supply()));
            stages.add(stage);
            return guidance.read(step, stage.bottleShown(), stage.supplyShown());
        }

        private @Nullable NextStep finish(NextStep step) {
            GaugePressure end = bench.bottlePressure();
            StatedPressure shown = readBottle(end);
            seen = new FillSeen(order, bottle.settled(), room, bench.room(), stages, end, bench.bottleSettled(), shown);
            bench.disconnect();
            return guidance.read(step, shown, null);
        }
    }
}
