package org.lowfirst.app.honest;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.warm.GasNow;
import org.lowfirst.planning.warm.GasNow.TimedReading;
import org.lowfirst.planning.warm.StopAndSettle;
import org.lowfirst.planning.warm.StopPlan;
import org.lowfirst.planning.warm.StopRequest;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.transfer.warm.Answer;

/** Says where to stop a fill, what the bottle settles to, how long that takes and whether to top up. Records nothing. */
public final class StoppingAndSettling {

    private static final double MS_PER_S = 1_000.0;

    private final BenchSource source;
    private final Wording wording;

    public StoppingAndSettling(BenchSource source, Locale locale) {
        this.source = source;
        this.wording = Wording.of(StoppingAndSettling.class, locale);
    }

    /**
     * A bottle as somebody describes it.
     *
     * @param bottle the bottle
     * @param reading what its gauge shows now
     * @param gas temperature of its gas
     * @param wall temperature of its wall; null when unknown
     * @param bench temperature of the bench; null for its usual one
     * @param target settled reading wanted; null for as full as the marking allows
     * @param empty mass of the bottle without gas; null when nobody weighed it
     */
    public record StatedNow(
            BottleId bottle,
            GaugePressure reading,
            Temperature gas,
            @Nullable Temperature wall,
            @Nullable Temperature bench,
            @Nullable GaugePressure target,
            @Nullable Mass empty) {

        public StatedNow(BottleId bottle, GaugePressure reading, Temperature gas) {
            this(bottle, reading, gas, null, null, null, null);
        }
    }

    /**
     * For the fill that is open, from its readings and their times.
     *
     * @param now what the gauge shows at this moment; null to go by the readings recorded
     * @param empty mass of the bottle without gas; null when nobody weighed it
     */
    public Outcome<StopAdvice> forOpenFill(BenchId id, @Nullable Reading now, @Nullable Mass empty) {
        Bench bench = source.getStanding(id).bench();
        OpenFill fill = bench.openFill().orElse(null);
        if (fill == null) {
            return Outcome.declined(problems().stated("no-open-fill", Map.of()));
        }
        List<TimedReading> readings = readings(fill, now);
        if (readings.size() < 2) {
            return Outcome.declined(problems().stated("too-few-readings", Map.of("measured", "1", "limit", "2")));
        }
        Temperature temperature = fill.before().temperature().temperature();
        return advise(
                bench,
                fill.bottle(),
                new GasNow.Filling(readings),
                temperature,
                fill.target().gauge(),
                empty);
    }

    /**
     * For a step of a fill: where to shut the valve as warm as the gas then is, by the readings of the fill so far; before the
     * first of them by a gauge that rises slowly. Empty when the bench allows no stop above the mark.
     */
    public Optional<StepStop> findForStep(BenchId id, OpenFill fill) {
        Bench bench = source.getStanding(id).bench();
        if (bench.warmStop() == null) {
            return Optional.empty();
        }
        List<TimedReading> readings = readings(fill, null);
        GasNow opening = new GasNow.Opening(fill.bottleNow().pressure().gauge(), StopAndSettle.slowRise());
        if (readings.size() < 2) {
            return step(bench, fill, opening);
        }
        return step(bench, fill, new GasNow.Filling(readings)).or(() -> step(bench, fill, opening));
    }

    private Optional<StepStop> step(Bench bench, OpenFill fill, GasNow now) {
        Temperature temperature = fill.before().temperature().temperature();
        StopPlan full = plan(bench, fill.bottle(), now, temperature, null, null) instanceof Answer.Given<StopPlan> given
                ? given.value()
                : null;
        StopPlan wanted =
                plan(bench, fill.bottle(), now, temperature, fill.target().gauge(), null)
                                instanceof Answer.Given<StopPlan> given
                        ? given.value()
                        : null;
        return full == null || wanted == null
                ? Optional.empty()
                : Optional.of(new StopSentences(wording, bench.settings()).ofStep(wanted, full));
    }

    /**
     * For a bottle as somebody describes it.
     *
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public Outcome<StopAdvice> forStated(BenchId id, StatedNow stated) {
        Bench bench = source.getStanding(id).bench();
        Temperature usual = bench.settings().surroundings().usualTemperature().temperature();
        return advise(
                bench,
                stated.bottle(),
                new GasNow.Stated(stated.reading(), stated.gas(), stated.wall()),
                stated.bench() == null ? usual : stated.bench(),
                stated.target(),
                stated.empty());
    }

    private Outcome<StopAdvice> advise(
            Bench bench,
            BottleId bottle,
            GasNow now,
            Temperature temperature,
            @Nullable GaugePressure target,
            @Nullable Mass empty) {
        Bottle known = bench.getBottle(bottle);
        Answer<StopPlan> plan = plan(bench, bottle, now, temperature, target, empty);
        StopSentences sentences = new StopSentences(wording, bench.settings());
        return problems()
                .outcome(plan, BenchUnits.shown(bench.settings()))
                .map(found -> new StopAdvice(
                        known, found, bench.warmStop(), sentences.of(found), sentences.assumed(known, found)));
    }

    private Answer<StopPlan> plan(
            Bench bench,
            BottleId bottle,
            GasNow now,
            Temperature temperature,
            @Nullable GaugePressure target,
            @Nullable Mass empty) {
        return WarmDesk.bottle(bench.getBottle(bottle).details(), empty, source.permitted(bench, bottle, source.now()))
                .then(rated -> StopAndSettle.plan(new StopRequest(
                        rated, now, WarmDesk.bench(bench, temperature), WarmDesk.compensation(bench), target)));
    }

    /** The readings of a fill; what was read at the same moment as the one before is left out. */
    static List<TimedReading> readings(OpenFill fill, @Nullable Reading now) {
        List<Reading> all = new ArrayList<>();
        all.add(fill.before());
        fill.stages().stream().map(Stage::bottleAfter).forEach(all::add);
        if (now != null) {
            all.add(now);
        }
        return timed(all);
    }

    static List<TimedReading> timed(List<Reading> readings) {
        Instant start = readings.get(0).at();
        List<TimedReading> timed = new ArrayList<>();
        double last_s = Double.NEGATIVE_INFINITY;
        for (Reading reading : readings) {
            double at_s = Duration.between(start, reading.at()).toMillis() / MS_PER_S;
            if (at_s != last_s) {
                timed.add(new TimedReading(at_s, reading.pressure().gauge()));
            }
            last_s = at_s;
        }
        return timed;
    }

    private Problems problems() {
        return new Problems(wording);
    }
}
