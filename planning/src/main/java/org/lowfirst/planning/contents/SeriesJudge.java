package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.LossSeries.Interval;

/** Turns the signatures of one series into a verdict. */
final class SeriesJudge {

    private final ShownPressure shown;
    private final VerdictThresholds thresholds;

    /** One explanation with its numbers; size in moles, positive when gas is missing. */
    record Explanation(
            Cause cause,
            @Nullable String other,
            int since,
            double missing_mol,
            double deviation_mol,
            double expectedNow_mol,
            double share,
            double z,
            double chance) {

        /** Twice the natural logarithm of the likelihood ratio against noise. */
        double fit() {
            return z * z;
        }
    }

    SeriesJudge(ShownPressure shown, VerdictThresholds thresholds) {
        this.shown = shown;
        this.thresholds = thresholds;
    }

    /** The verdict on the last reading of a series with at least one, the series alone. */
    Verdict judge(MeteredCylinder cylinder, LossSeries series) {
        return judge(cylinder, series, explanations(series));
    }

    /** The verdict on the last reading of a series, chosen among explanations. */
    Verdict judge(MeteredCylinder cylinder, LossSeries series, List<Explanation> all) {
        List<Explanation> likely = all.stream()
                .filter(e -> e.chance() <= thresholds.likelyChance())
                .toList();
        if (!likely.isEmpty()) {
            return accuse(cylinder, series, likely, all);
        }
        Explanation first = all.stream()
                .min(Comparator.comparingDouble(Explanation::chance))
                .orElse(null);
        if (first != null && first.chance() <= thresholds.watchChance()) {
            return verdict(VerdictCode.WATCH, cylinder, series, first, List.of(), Advice.READ_AGAIN_SETTLED);
        }
        return quiet(cylinder, series, first == null ? 1.0 : first.chance());
    }

    private Verdict accuse(
            MeteredCylinder cylinder, LossSeries series, List<Explanation> likely, List<Explanation> all) {
        Explanation best = choose(likely);
        List<Cause> also = all.stream()
                .filter(e -> e.cause() != best.cause()
                        && e.fit() > best.fit() - 2.0 * thresholds.preference()
                        && e.chance() <= thresholds.watchChance())
                .map(Explanation::cause)
                .distinct()
                .toList();
        return switch (best.cause()) {
            case LEAK -> verdict(VerdictCode.LIKELY_LEAK, cylinder, series, best, also, Advice.FIND_THE_LEAK);
            case UNRECORDED_FILL, WRONG_VALVE, OTHER_SOURCE, UNRECORDED_EXCHANGE ->
                verdict(
                        VerdictCode.LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL,
                        cylinder,
                        series,
                        best,
                        also,
                        Advice.CHECK_VALVES_AND_JOURNAL);
            case BOTTLE_VOLUME, SUPPLY_VOLUME ->
                verdict(VerdictCode.LIKELY_WRONG_VOLUME, cylinder, series, best, also, Advice.CHECK_THE_STAMPED_VOLUME);
            case READS_HIGH, GAUGE_PAIR ->
                verdict(VerdictCode.GAUGE_DISAGREES, cylinder, series, best, also, Advice.COMPARE_THE_GAUGES);
            case MISREAD, NOISE -> verdict(VerdictCode.WATCH, cylinder, series, best, also, Advice.READ_AGAIN_SETTLED);
        };
    }

    /** A verdict on the volume of a bottle, shown on the supply that has most to say about it. */
    Verdict judgeVolume(MeteredCylinder bottle, LossSeries supply, Explanation why) {
        boolean likely = why.chance() <= thresholds.likelyChance();
        ContentsMeasurement last = supply.last();
        Evidence evidence = new Evidence(
                supply.reading(0).reading().at(),
                last.reading().at(),
                last.shown(),
                last.shown(),
                why.missing_mol(),
                why.deviation_mol(),
                why.share(),
                last.reading().temperature().value());
        return new Verdict(
                likely ? VerdictCode.LIKELY_WRONG_VOLUME : VerdictCode.WATCH,
                bottle.name(),
                last.reading().cylinder(),
                Cause.BOTTLE_VOLUME,
                List.of(),
                evidence,
                why.chance(),
                likely ? Advice.CHECK_THE_STAMPED_VOLUME : Advice.READ_AGAIN_SETTLED);
    }

    /** The best explanation; a leak stands unless another is better by the preference. */
    private Explanation choose(List<Explanation> likely) {
        Explanation best = likely.stream()
                .max(Comparator.comparingDouble(Explanation::fit))
                .orElseThrow();
        return likely.stream()
                .filter(e -> e.cause() == Cause.LEAK)
                .filter(leak -> leak.fit() > best.fit() - 2.0 * thresholds.preference())
                .findFirst()
                .orElse(best);
    }

    List<Explanation> explanations(LossSeries series) {
        List<Explanation> found = new ArrayList<>();
        Signature leak = series.leaks().strongestPositive();
        if (leak != null) {
            double chance = series.leaks().chanceAbove(strength(series, leak));
            found.add(explain(series, Cause.LEAK, null, leak, chance, leak.size()));
        }
        Signature lost = series.steps().strongestPositive();
        if (lost != null) {
            found.add(step(series, Cause.UNRECORDED_FILL, lost));
        }
        Signature gained = series.steps().strongestNegative();
        if (gained != null) {
            found.add(step(series, gainCause(series, gained), gained));
        }
        for (Signature misread : new Signature[] {
            series.misreads().strongestPositive(), series.misreads().strongestNegative()
        }) {
            if (misread != null && misread.since < series.lastIndex()) {
                double chance = 2.0 * series.misreads().chanceAbove(strength(series, misread));
                found.add(explain(series, Cause.MISREAD, null, misread, chance, 0.0));
            }
        }
        return found;
    }

    /** Size over its standard deviation, that widened when the series scatters more than assumed. */
    static double strength(LossSeries series, Signature signature) {
        double z = Math.abs(signature.z());
        return z / series.scatterFactor(z);
    }

    private Explanation step(LossSeries series, Cause cause, Signature step) {
        double chance = 2.0 * series.steps().chanceAbove(strength(series, step));
        return explain(series, cause, null, step, chance, 0.0);
    }

    /** Gas cannot come back by itself: the record names the wrong supply, or the gauge errs, or the cylinder was changed. */
    private static Cause gainCause(LossSeries series, Signature gained) {
        Interval when = series.intervalAfter(gained.since);
        if (when.open()) {
            return Cause.OTHER_SOURCE;
        }
        ContentsMeasurement last = series.last();
        double gained_Pa = Math.abs(gained.size()) / last.molesPerPascal();
        double gaugesAllow_Pa = 2.0 * Math.sqrt(3.0) * last.gauge().offset_Pa();
        return gained_Pa > gaugesAllow_Pa ? Cause.UNRECORDED_EXCHANGE : Cause.READS_HIGH;
    }

    private static Explanation explain(
            LossSeries series, Cause cause, @Nullable String other, Signature signature, double chance, double share) {
        double missing_mol = -signature.size() * signature.inserted();
        double deviation_mol =
                signature.sizeDeviation() * series.scatterFactor(signature.z()) * Math.abs(signature.inserted());
        double now_mol = series.level() + signature.size() * signature.deviation() + missing_mol;
        return new Explanation(
                cause,
                other,
                signature.since,
                missing_mol,
                deviation_mol,
                now_mol,
                share,
                strength(series, signature),
                Math.min(1.0, chance));
    }

    private Verdict verdict(
            VerdictCode code,
            MeteredCylinder cylinder,
            LossSeries series,
            Explanation why,
            List<Cause> also,
            Advice advice) {
        ContentsMeasurement last = series.last();
        ContentsMeasurement before = series.reading(Math.min(why.since(), series.lastIndex()));
        GaugePressure expected = shown.after(cylinder, last, why.expectedNow_mol() - last.amount_mol());
        Evidence evidence = new Evidence(
                before.reading().at(),
                last.reading().at(),
                expected,
                last.shown(),
                why.missing_mol(),
                why.deviation_mol(),
                why.share(),
                before.reading().temperature().value());
        return new Verdict(code, cylinder.name(), why.other(), why.cause(), also, evidence, why.chance(), advice);
    }

    private Verdict quiet(MeteredCylinder cylinder, LossSeries series, double chance) {
        ContentsMeasurement last = series.last();
        ContentsMeasurement before = series.reading(Math.max(0, series.lastIndex() - 1));
        double off_mol = series.innovation();
        Evidence evidence = new Evidence(
                before.reading().at(),
                last.reading().at(),
                shown.after(cylinder, last, -off_mol),
                last.shown(),
                -off_mol,
                Double.isNaN(series.innovationVariance())
                        ? last.alone().standardDeviation_mol()
                        : Math.sqrt(series.innovationVariance()),
                0.0,
                before.reading().temperature().value());
        return new Verdict(
                VerdictCode.INSIDE_GAUGE_UNCERTAINTY,
                cylinder.name(),
                null,
                Cause.NOISE,
                List.of(),
                evidence,
                chance,
                Advice.NOTHING);
    }
}
