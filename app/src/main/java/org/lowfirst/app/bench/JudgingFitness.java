package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.fitness.FitnessWriter;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Judging;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;

/** Judges whether bottles may be filled today, by the rule book in force. Enters nothing. */
public final class JudgingFitness {

    private final Recorder recorder;
    private final GateGas gas;
    private final Locale locale;

    JudgingFitness(Recorder recorder, GateGas gas, Locale locale) {
        this.recorder = recorder;
        this.gas = gas;
        this.locale = locale;
    }

    /** The day at the bench. */
    public LocalDate today() {
        return LocalDate.ofInstant(recorder.clock().instant(), recorder.clock().getZone());
    }

    /**
     * The bottles in use, in the order registered, as they were read last.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public List<FitnessReport> list(BenchId bench) {
        Bench now = recorder.getState(bench).bench();
        FitnessWriter writer = new FitnessWriter(now, locale);
        return now.listBottles().stream()
                .filter(Bottle::inUse)
                .map(bottle -> writer.report(bottle.id(), latest(bottle), today(), List.of()))
                .toList();
    }

    /**
     * One bottle as it was read last, nothing wanted.
     *
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public FitnessReport ofBottle(BenchId bench, BottleId bottle) {
        Bench now = recorder.getState(bench).bench();
        return new FitnessWriter(now, locale).report(bottle, latest(now.getBottle(bottle)), today(), List.of());
    }

    /**
     * One bottle as it was found on the day of a fill that is over, by the rules and the marking as they are known now.
     *
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public FitnessReport onDay(BenchId bench, BottleId bottle, Reading before, LocalDate day) {
        Bench now = recorder.getState(bench).bench();
        return new FitnessWriter(now, locale).report(bottle, before.pressure().gauge(), day, List.of());
    }

    /**
     * One bottle as far as it can be judged before anybody reads its gauge.
     *
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public FitnessReport beforeReading(BenchId bench, BottleId bottle) {
        Bench now = recorder.getState(bench).bench();
        return new FitnessWriter(now, locale).report(bottle, null, today(), List.of());
    }

    /**
     * One bottle for one fill. A target that is too high does not refuse the bottle: the fill is kept below it, and the report
     * says by which rule.
     *
     * @param target settled gauge reading wanted
     * @param before what its gauge shows, settled, at the temperature of the bench
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public FitnessReport forFill(BenchId bench, BottleId bottle, StatedPressure target, Reading before) {
        Bench now = recorder.getState(bench).bench();
        return new FitnessWriter(now, locale)
                .report(
                        bottle,
                        before.pressure().gauge(),
                        today(),
                        gas.atBookTemperatures(
                                now,
                                today(),
                                target.gauge(),
                                before.temperature().temperature()));
    }

    /**
     * The target, or the highest that a fill of this bottle may be begun with: the marked pressure, or what a plus-rating that
     * counts makes of it. On a cold bench the guide stops still lower.
     */
    public StatedPressure allowed(BenchId bench, BottleId bottle, StatedPressure target) {
        Bench now = recorder.getState(bench).bench();
        StatedPressure marked = now.getBottle(bottle).details().servicePressure();
        if (target.compareTo(marked) <= 0) {
            return target;
        }
        StatedPressure rated = Judging.rated(now, bottle, today())
                .filter(pressure -> pressure.compareTo(marked.gauge()) > 0)
                .map(pressure -> new StatedPressure(
                        BigDecimal.valueOf(pressure.to(marked.unit())).setScale(1, RoundingMode.HALF_UP),
                        marked.unit()))
                .orElse(marked);
        return target.compareTo(rated) <= 0 ? target : rated;
    }

    /**
     * The highest settled gauge reading that keeps all limits of a bottle at a temperature; empty when it has none, because its
     * marking is not known.
     *
     * @param reading gives the temperature
     */
    public Optional<GaugePressure> findMost(BenchId bench, BottleId bottle, Reading reading) {
        return gas.findMost(
                recorder.getState(bench).bench(),
                bottle,
                today(),
                reading.temperature().temperature());
    }

    private static @Nullable GaugePressure latest(Bottle bottle) {
        Reading latest = bottle.latest();
        return latest == null ? null : latest.pressure().gauge();
    }
}
