package org.lowfirst.planning.contents;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.BenchFact.StageMade;
import org.lowfirst.planning.contents.BenchFact.SupplyExchanged;
import org.lowfirst.planning.contents.BenchHistory.DatedVerdict;
import org.lowfirst.planning.contents.BenchHistory.RefusedFact;
import org.lowfirst.planning.contents.BenchHistory.TrackPoint;
import org.lowfirst.planning.contents.ReadingOutcome.Accepted;
import org.lowfirst.planning.contents.ReadingOutcome.ReadingAdvice;
import org.lowfirst.planning.contents.ReadingOutcome.Refused;
import org.lowfirst.planning.contents.ReadingOutcome.Rule;

/** One run over the facts of a bench. Mutable, used once. */
final class Reconciler {

    private final ContentsAssumptions assumptions;
    private final Register register;
    private final ReadingCheck check;
    private final BenchFilter filter;
    private final Map<String, LossSeries> series = new LinkedHashMap<>();
    private final CrossJudge judge;

    private final List<TrackPoint> track = new ArrayList<>();
    private final List<DatedVerdict> verdicts = new ArrayList<>();
    private final List<RefusedFact> refused = new ArrayList<>();
    private @Nullable Instant latest;

    Reconciler(
            Surroundings surroundings,
            ContentsAssumptions assumptions,
            Collection<MeteredCylinder> cylinders,
            Collection<Gauge> gauges) {
        this.assumptions = assumptions;
        this.register = new Register(cylinders, gauges);
        this.check = new ReadingCheck(surroundings, assumptions);
        this.filter = new BenchFilter(assumptions);
        SeriesJudge alone = new SeriesJudge(new ShownPressure(surroundings), assumptions.verdicts());
        this.judge = new CrossJudge(alone, assumptions.verdicts(), series);
    }

    void take(BenchFact fact) {
        if (latest != null && fact.at().isBefore(latest)) {
            refuse(
                    fact,
                    new Refused(
                            null,
                            Rule.TIME_GOES_BACK,
                            fact.at().getEpochSecond(),
                            latest.getEpochSecond(),
                            "s since 1970",
                            ReadingAdvice.CHECK_THE_CLOCK));
            return;
        }
        latest = fact.at();
        if (fact instanceof ReadingTaken taken) {
            takeReading(taken);
        } else if (fact instanceof StageMade stage) {
            takeStage(stage);
        } else if (fact instanceof SupplyExchanged exchange) {
            takeExchange(exchange);
        } else {
            throw new AssertionError("unhandled " + fact);
        }
    }

    private void takeReading(ReadingTaken taken) {
        ContentsMeasurement m = accept(taken, taken.reading());
        if (m == null) {
            return;
        }
        if (taken.since() == Since.MAYBE_USED) {
            series.remove(taken.reading().cylinder());
            startEstimate(m);
        } else {
            correctEstimate(m);
        }
        watch(m);
    }

    private void takeExchange(SupplyExchanged exchange) {
        ContentsMeasurement m = accept(exchange, exchange.arriving());
        series.remove(exchange.leaving());
        filter.forget(exchange.leaving());
        if (m != null) {
            series.remove(exchange.arriving().cylinder());
            startEstimate(m);
            watch(m);
        }
    }

    private void takeStage(StageMade stage) {
        if (!register.hasCylinder(stage.supply()) || !register.hasCylinder(stage.bottle())) {
            refuse(stage, Register.unknown(Rule.UNKNOWN_CYLINDER, null));
            return;
        }
        ContentsMeasurement supplyAfter =
                stage.supplyAfter() == null ? null : acceptOf(stage, stage.supplyAfter(), stage.supply());
        ContentsMeasurement bottleAfter =
                stage.bottleAfter() == null ? null : acceptOf(stage, stage.bottleAfter(), stage.bottle());
        moveEstimates(stage, supplyAfter, bottleAfter);
        watchStage(stage, bottleAfter);
        if (bottleAfter != null) {
            seriesOf(stage.bottle()).read(bottleAfter);
        }
        if (supplyAfter != null) {
            watch(supplyAfter);
            Verdict volume = judge.judgeVolume(register.cylinder(stage.bottle()));
            if (volume != null) {
                verdicts.add(new DatedVerdict(stage.at(), volume));
            }
        }
    }

    private void moveEstimates(
            StageMade stage, @Nullable ContentsMeasurement supplyAfter, @Nullable ContentsMeasurement bottleAfter) {
        if (filter.knows(stage.supply()) && filter.knows(stage.bottle())) {
            ContentsEstimate moved = stage.moved();
            double unknown_mol = Math.abs(filter.contents(stage.supply()).mean_mol()) + 1.0;
            filter.stage(
                    stage.supply(),
                    stage.bottle(),
                    stage.at(),
                    moved == null ? 0.0 : moved.mean_mol(),
                    moved == null ? unknown_mol : moved.standardDeviation_mol());
        }
        if (supplyAfter != null
                && bottleAfter != null
                && stage.equal()
                && comparesGauges(stage, supplyAfter, bottleAfter)) {
            ensureKnown(supplyAfter);
            ensureKnown(bottleAfter);
            double[] surprises = filter.readEqual(gaugeOf(supplyAfter), supplyAfter, gaugeOf(bottleAfter), bottleAfter);
            remember(supplyAfter, surprises[0]);
            remember(bottleAfter, surprises[1]);
            return;
        }
        if (bottleAfter != null) {
            correctEstimate(bottleAfter);
        }
        if (supplyAfter != null) {
            correctEstimate(supplyAfter);
        }
    }

    private void ensureKnown(ContentsMeasurement m) {
        if (!filter.knows(m.reading().cylinder())) {
            filter.start(gaugeOf(m), m);
        }
    }

    /** Whether two gauges on one pressure may both be believed; says so when not. */
    private boolean comparesGauges(StageMade stage, ContentsMeasurement supply, ContentsMeasurement bottle) {
        GaugePair pair =
                GaugePair.compare(gaugeOf(supply), supply.shown(), gaugeOf(bottle), bottle.shown(), assumptions);
        if (!pair.disagrees(assumptions.verdicts())) {
            return !gaugeOf(supply).name().equals(gaugeOf(bottle).name());
        }
        Evidence evidence = new Evidence(
                stage.at(),
                stage.at(),
                supply.shown(),
                bottle.shown(),
                0.0,
                0.0,
                0.0,
                supply.reading().temperature().value());
        verdicts.add(new DatedVerdict(
                stage.at(),
                new Verdict(
                        VerdictCode.GAUGE_DISAGREES,
                        stage.supply(),
                        stage.bottle(),
                        Cause.GAUGE_PAIR,
                        List.of(),
                        evidence,
                        pair.chanceOfNoise(),
                        Advice.COMPARE_THE_GAUGES)));
        return false;
    }

    private void watchStage(StageMade stage, @Nullable ContentsMeasurement bottleAfter) {
        LossSeries bottle = seriesOf(stage.bottle());
        LossSeries supply = seriesOf(stage.supply());
        if (bottleAfter == null || bottle.isEmpty() || bottle.hasUnknownMove()) {
            supply.movedUnknown(stage.bottle());
        } else {
            supply.gave(EnteredBottle.of(
                    register.cylinder(stage.supply()),
                    register.cylinder(stage.bottle()),
                    bottle.last(),
                    bottleAfter,
                    assumptions.volumes()));
        }
        bottle.movedUnknown(stage.supply());
    }

    private void watch(ContentsMeasurement m) {
        String name = m.reading().cylinder();
        LossSeries own = seriesOf(name);
        own.read(m);
        Verdict verdict = judge.judge(register.cylinder(name), own);
        verdicts.add(new DatedVerdict(m.reading().at(), verdict));
        String other = verdict.other();
        if (verdict.cause() == Cause.WRONG_VALVE && other != null) {
            Verdict there = judge.judge(register.cylinder(other), seriesOf(other));
            verdicts.add(new DatedVerdict(m.reading().at(), there));
        }
    }

    private void startEstimate(ContentsMeasurement m) {
        filter.start(gaugeOf(m), m);
        remember(m, 0.0);
    }

    private void correctEstimate(ContentsMeasurement m) {
        if (filter.knows(m.reading().cylinder())) {
            remember(m, filter.read(gaugeOf(m), m));
        } else {
            startEstimate(m);
        }
    }

    private void remember(ContentsMeasurement m, double surprise) {
        String name = m.reading().cylinder();
        track.add(new TrackPoint(m.reading().at(), name, withVolume(name), surprise));
    }

    /** The filter counts gas as if the stated volume were exact; here what the volume may be off comes in. */
    private ContentsEstimate withVolume(String cylinder) {
        ContentsEstimate exact = filter.contents(cylinder);
        double volume_mol = exact.mean_mol() * register.cylinder(cylinder).volumeShare(assumptions.volumes());
        return new ContentsEstimate(exact.mean_mol(), Math.hypot(exact.standardDeviation_mol(), volume_mol));
    }

    private @Nullable ContentsMeasurement acceptOf(BenchFact fact, GaugeReading reading, String cylinder) {
        if (!reading.cylinder().equals(cylinder)) {
            refuse(fact, Register.unknown(Rule.OTHER_CYLINDER, reading));
            return null;
        }
        return accept(fact, reading);
    }

    private @Nullable ContentsMeasurement accept(BenchFact fact, GaugeReading reading) {
        Refused unknown = register.unknownIn(reading);
        if (unknown != null) {
            refuse(fact, unknown);
            return null;
        }
        ReadingOutcome outcome =
                check.check(reading, register.cylinder(reading.cylinder()), register.gauge(reading.gauge()));
        if (outcome instanceof Accepted accepted) {
            return accepted.measurement();
        }
        if (outcome instanceof Refused no) {
            refuse(fact, no);
            return null;
        }
        throw new AssertionError("unhandled " + outcome);
    }

    private void refuse(BenchFact fact, Refused why) {
        refused.add(new RefusedFact(fact, why));
    }

    private Gauge gaugeOf(ContentsMeasurement m) {
        return register.gauge(m.reading().gauge());
    }

    private LossSeries seriesOf(String cylinder) {
        return series.computeIfAbsent(cylinder, name -> new LossSeries(assumptions));
    }

    BenchHistory history() {
        Map<String, Verdict> standing = new LinkedHashMap<>();
        series.forEach((name, own) -> {
            if (!own.isEmpty()) {
                Verdict volume = judge.judgeVolume(register.cylinder(name));
                standing.put(name, volume == null ? judge.judge(register.cylinder(name), own) : volume);
            }
        });
        Map<String, ContentsEstimate> contents = new LinkedHashMap<>();
        filter.cylinders().forEach(name -> contents.put(name, withVolume(name)));
        return new BenchHistory(track, verdicts, refused, contents, filter.offsets(register.gauges()), standing);
    }
}
