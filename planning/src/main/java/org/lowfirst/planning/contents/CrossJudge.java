package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.contents.LossSeries.Interval;
import org.lowfirst.planning.contents.SeriesJudge.Explanation;

/** Judges one series in the light of the others: one wrong volume shows in many, a wrong valve in two. */
final class CrossJudge {

    /** Two steps belong together when their sizes differ by at most this many standard deviations. */
    private static final double SAME_SIZE_SD = 3.0;

    private final SeriesJudge judge;
    private final VerdictThresholds thresholds;
    private final Map<String, LossSeries> all;
    private final Map<LossSeries, BestFit> fits = new HashMap<>();

    /** How well the best explanation within a series fits, and how far the series had gone then. */
    private record BestFit(int changes, double fit) {}

    CrossJudge(SeriesJudge judge, VerdictThresholds thresholds, Map<String, LossSeries> all) {
        this.judge = judge;
        this.thresholds = thresholds;
        this.all = all;
    }

    /** The verdict on the last reading of a supply or bottle. */
    Verdict judge(MeteredCylinder cylinder, LossSeries series) {
        List<Explanation> own = judge.explanations(series);
        List<Explanation> explanations = new ArrayList<>(own);
        for (Explanation step : own) {
            boolean suddenly = step.cause() == Cause.UNRECORDED_FILL || step.cause() == Cause.OTHER_SOURCE;
            if (suddenly && step.chance() <= thresholds.watchChance()) {
                addWrongValve(explanations, cylinder.name(), series, step);
            }
        }
        addSupplyVolume(explanations, series);
        Verdict alone = judge.judge(cylinder, series, explanations);
        if (alone.code() != VerdictCode.INSIDE_GAUGE_UNCERTAINTY) {
            boolean changed = addWrongBottles(explanations, series);
            return changed ? judge.judge(cylinder, series, explanations) : alone;
        }
        return alone;
    }

    /** Where a bottle's volume is likely wrong, it explains what is odd about the supplies it was filled from. */
    private boolean addWrongBottles(List<Explanation> explanations, LossSeries series) {
        boolean changed = false;
        for (Map.Entry<String, Signature> partner : series.partnerVolumes().entrySet()) {
            Pooled pooled = pool(partner.getKey());
            if (pooled != null && pooled.chance() <= thresholds.likelyChance()) {
                explanations.add(volume(Cause.BOTTLE_VOLUME, partner.getKey(), series, partner.getValue(), pooled));
                changed = true;
            }
        }
        return changed;
    }

    /**
     * The verdict on the volume of a bottle from all the stages into it; null when they say nothing against it, or when what
     * one supply has to say for itself explains them better.
     */
    @Nullable
    Verdict judgeVolume(MeteredCylinder bottle) {
        Pooled pooled = pool(bottle.name());
        if (pooled == null) {
            return null;
        }
        LossSeries clearest = pooled.clearest();
        Signature here = Objects.requireNonNull(clearest.partnerVolumes().get(bottle.name()));
        Explanation why = volume(Cause.BOTTLE_VOLUME, bottle.name(), clearest, here, pooled);
        return judge.judgeVolume(bottle, clearest, why);
    }

    /** What all supplies together say about the volume of one bottle. */
    private record Pooled(double size, double information, double chance, LossSeries clearest) {
        double z() {
            return Math.abs(size) * Math.sqrt(information);
        }
    }

    private @Nullable Pooled pool(String bottle) {
        double score = 0.0;
        double information = 0.0;
        int stages = 0;
        LossSeries clearest = null;
        double most = 0.0;
        for (LossSeries supply : all.values()) {
            Signature here = supply.partnerVolumes().get(bottle);
            if (here != null && here.information() > 0.0) {
                double widened = supply.scatterFactor(here.z());
                score += here.score() / (widened * widened);
                information += here.information() / (widened * widened);
                stages += here.insertions();
                clearest = here.information() > most ? supply : clearest;
                most = Math.max(most, here.information());
            }
        }
        if (stages < 2 || clearest == null) {
            return null;
        }
        double z = Math.abs(score) / Math.sqrt(information);
        double chance = Gaussian.beyond(z);
        boolean stands =
                chance <= thresholds.watchChance() && z * z > bestOfOthers(bottle) + 2.0 * thresholds.preference();
        return stands ? new Pooled(score / information, information, chance, clearest) : null;
    }

    /** How well the best explanation within one supply fits, of those that filled this bottle. */
    private double bestOfOthers(String bottle) {
        double best = 0.0;
        for (LossSeries supply : all.values()) {
            if (supply.partnerVolumes().containsKey(bottle)) {
                best = Math.max(best, bestFit(supply));
            }
        }
        return best;
    }

    /** Worked out again only when the supply was drawn from or read since: those long gone are not gone through each time. */
    private double bestFit(LossSeries supply) {
        BestFit known = fits.get(supply);
        if (known != null && known.changes() == supply.changes()) {
            return known.fit();
        }
        List<Explanation> own = judge.explanations(supply);
        addSupplyVolume(own, supply);
        double best = 0.0;
        for (Explanation explanation : own) {
            best = Math.max(best, explanation.fit());
        }
        fits.put(supply, new BestFit(supply.changes(), best));
        return best;
    }

    /** Needs two bottles: with one, it cannot be told from the volume of that bottle. */
    private static void addSupplyVolume(List<Explanation> explanations, LossSeries series) {
        Signature own = series.ownVolume();
        if (own.information() > 0.0 && series.partnerVolumes().size() >= 2) {
            double widened = series.scatterFactor(own.z());
            double chance = Gaussian.beyond(own.z() / widened);
            Pooled alone = new Pooled(own.size(), own.information() / (widened * widened), chance, series);
            explanations.add(volume(Cause.SUPPLY_VOLUME, null, series, own, alone));
        }
    }

    private static Explanation volume(
            Cause cause, @Nullable String other, LossSeries series, Signature here, Pooled pooled) {
        double missing_mol = -pooled.size() * here.inserted();
        return new Explanation(
                cause,
                other,
                0,
                missing_mol,
                Math.abs(here.inserted()) / Math.sqrt(pooled.information()),
                series.level() + pooled.size() * here.deviation() + missing_mol,
                pooled.size(),
                pooled.z(),
                pooled.chance());
    }

    /** Another supply changed by as much the other way in the same time: the two were mixed up. */
    private void addWrongValve(List<Explanation> explanations, String cylinder, LossSeries series, Explanation step) {
        Interval when = series.intervalAfter(step.since());
        all.forEach((name, other) -> {
            Signature opposite = step.missing_mol() > 0.0
                    ? other.steps().strongestNegative()
                    : other.steps().strongestPositive();
            if (name.equals(cylinder) || opposite == null || !when.overlaps(other.intervalAfter(opposite.since))) {
                return;
            }
            boolean oneWasNamed =
                    when.open() != other.intervalAfter(opposite.since).open();
            double gap_mol = step.missing_mol() + opposite.size();
            double widened = other.scatterFactor(opposite.z());
            double allowed_mol = SAME_SIZE_SD * Math.hypot(step.deviation_mol(), widened * opposite.sizeDeviation());
            double strength = SeriesJudge.strength(other, opposite);
            double chance = 2.0 * other.steps().chanceAbove(strength);
            if (oneWasNamed && Math.abs(gap_mol) <= allowed_mol && chance <= thresholds.watchChance()) {
                explanations.add(together(step, name, strength, chance));
            }
        });
    }

    private Explanation together(Explanation step, String other, double strength, double otherChance) {
        return new Explanation(
                Cause.WRONG_VALVE,
                other,
                step.since(),
                step.missing_mol(),
                step.deviation_mol(),
                step.expectedNow_mol(),
                0.0,
                Math.hypot(step.z(), strength),
                Math.min(1.0, all.size() * step.chance() * otherChance));
    }
}
