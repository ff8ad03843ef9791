package org.lowfirst.station;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** What can have happened during a fill. Every id in the fact is known. */
final class FillRules {

    private final Bench bench;
    private final Circumstances circumstances;
    private final BiFunction<CylinderId, @Nullable Reading, @Nullable Refused> readingRule;

    FillRules(
            Bench bench,
            Circumstances circumstances,
            BiFunction<CylinderId, @Nullable Reading, @Nullable Refused> readingRule) {
        this.bench = bench;
        this.circumstances = circumstances;
        this.readingRule = readingRule;
    }

    @Nullable
    Refused check(Fact fact) {
        if (fact instanceof Fact.FillStarted f) {
            Refused target = target(f.bottle(), f.target());
            return target == null ? readingRule.apply(f.bottle(), f.before()) : target;
        } else if (fact instanceof Fact.StageRecorded f) {
            OpenFill fill = bench.findOpenFill(f.fill()).orElse(null);
            return fill == null ? withoutFill(f.stage()) : stageOf(fill, f.stage());
        } else if (fact instanceof Fact.FillFinished f) {
            OpenFill fill = bench.findOpenFill(f.fill()).orElse(null);
            return fill == null ? ReadingRules.notBelowZero("", f.after()) : finished(fill, f.after());
        } else if (fact instanceof Fact.FillAbandoned f) {
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, "") : null;
        } else if (fact instanceof Fact.FillRecorded f) {
            return recorded(f);
        }
        throw new AssertionError("unhandled " + fact);
    }

    private @Nullable Refused target(BottleId id, StatedPressure target) {
        BottleDetails bottle = bench.getBottle(id).details();
        if (target.value().signum() <= 0) {
            return new Refused(Rule.TARGET_NOT_ABOVE_ZERO, bottle.name(), target, null);
        }
        StatedPressure limit = limit(id, bottle.servicePressure());
        return target.compareTo(limit) > 0
                ? new Refused(Rule.TARGET_ABOVE_SERVICE_PRESSURE, bottle.name(), target, limit)
                : null;
    }

    /** The marked pressure, or what a plus-rating that counts makes of it. */
    private StatedPressure limit(BottleId id, StatedPressure marked) {
        if (bench.areas().gate().papersOf(id).plus() == null) {
            return marked;
        }
        return Judging.rated(bench, id, circumstances.day())
                .filter(rated -> rated.compareTo(marked.gauge()) > 0)
                .map(rated -> new StatedPressure(
                        BigDecimal.valueOf(rated.to(marked.unit())).setScale(1, RoundingMode.HALF_UP), marked.unit()))
                .orElse(marked);
    }

    private @Nullable Refused stageOf(OpenFill fill, Stage stage) {
        Refused early = notBefore(fill.startedAt(), stage.bottleAfter());
        return early == null ? stage(fill.bottle(), fill.bottleNow(), stage) : early;
    }

    /** A stage put right after its fill has ended; which bottle it was is not in the stage. */
    private @Nullable Refused withoutFill(Stage stage) {
        Refused refused = ReadingRules.notBelowZero("", stage.bottleAfter());
        if (refused == null) {
            refused = readingRule.apply(stage.supply(), stage.supplyBefore());
        }
        return refused == null ? readingRule.apply(stage.supply(), stage.supplyAfter()) : refused;
    }

    private @Nullable Refused stage(BottleId bottle, Reading before, Stage stage) {
        Refused refused = readingRule.apply(bottle, stage.bottleAfter());
        if (refused == null) {
            refused = readingRule.apply(stage.supply(), stage.supplyBefore());
        }
        if (refused == null) {
            refused = readingRule.apply(stage.supply(), stage.supplyAfter());
        }
        return refused == null ? rise(bottle, before, stage.bottleAfter()) : refused;
    }

    private @Nullable Refused finished(OpenFill fill, Reading after) {
        Refused early = notBefore(fill.startedAt(), after);
        return early == null ? readingRule.apply(fill.bottle(), after) : early;
    }

    private @Nullable Refused recorded(Fact.FillRecorded f) {
        Refused refused = f.target() == null ? null : target(f.bottle(), f.target());
        if (refused == null) {
            refused = readingRule.apply(f.bottle(), f.before());
        }
        Reading latest = f.before();
        for (Stage stage : f.stages()) {
            if (refused == null) {
                refused = stage(f.bottle(), latest, stage);
            }
            latest = stage.bottleAfter();
        }
        if (refused == null) {
            refused = notBefore(f.before().at(), f.after());
        }
        if (refused == null) {
            refused = readingRule.apply(f.bottle(), f.after());
        }
        return refused == null ? rise(f.bottle(), f.before(), f.after()) : refused;
    }

    /** A stage lifts the bottle; a lower gauge means gas ran back, and then the person is asked to look again. */
    private @Nullable Refused rise(BottleId bottle, Reading before, Reading after) {
        double fall =
                before.pressure().gauge().pascals() - after.pressure().gauge().pascals();
        double allowed =
                bench.settings().rules().figures().repeatability().gauge().pascals();
        return fall > allowed && !circumstances.confirmed()
                ? new Refused(
                        Rule.BOTTLE_FELL, bench.getBottle(bottle).details().name(), after.pressure(), before.pressure())
                : null;
    }

    private static @Nullable Refused notBefore(Instant start, Reading reading) {
        return reading.at().isBefore(start.minus(TimeRules.CLOCK_TOLERANCE))
                ? new Refused(Rule.TIME_BEFORE_START, "", new StatedTime(reading.at()), new StatedTime(start))
                : null;
    }
}
