package org.lowfirst.planning;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;

/**
 * A bench made ready, or what is wrong with the conditions.
 *
 * @param bench null when refused
 * @param refused null when ready
 */
record BenchOutcome(@Nullable Bench bench, @Nullable PlanRefused refused) {

    static BenchOutcome under(Conditions conditions) {
        if (conditions.ambient().compareTo(Limits.LOWEST_AMBIENT) < 0
                || conditions.ambient().compareTo(Limits.HIGHEST_AMBIENT) > 0) {
            return refused(new PlanRefused.AmbientOutOfRange(
                    conditions.ambient(), Limits.LOWEST_AMBIENT, Limits.HIGHEST_AMBIENT));
        }
        if (conditions.hose().compareTo(Limits.LARGEST_HOSE) > 0) {
            return refused(new PlanRefused.VolumeOutOfRange(
                    "hose volume", conditions.hose(), Limits.NO_HOSE, Limits.LARGEST_HOSE));
        }
        Evaluated<Isotherm> now = conditions.gas().isotherm(conditions.bench());
        Evaluated<Isotherm> marked = conditions.bench().equals(conditions.reference())
                ? now
                : conditions.gas().isotherm(conditions.reference());
        if (now instanceof Evaluated.Value<Isotherm> here && marked instanceof Evaluated.Value<Isotherm> there) {
            Settled bench = new Settled(here.value(), conditions.ambient());
            Settled reference = new Settled(there.value(), conditions.ambient());
            return new BenchOutcome(Bench.of(bench, reference, conditions.hose().cubicMetres()), null);
        }
        return now instanceof Evaluated.Value
                ? refused(why("reference", marked, conditions.reference()))
                : refused(why("bench", now, conditions.bench()));
    }

    /** The refusal of a bench that is not ready. */
    PlanRefused why() {
        return Objects.requireNonNull(refused, "a bench is either ready or refused");
    }

    private static BenchOutcome refused(PlanRefused why) {
        return new BenchOutcome(null, why);
    }

    private static PlanRefused why(String what, Evaluated<Isotherm> missing, Temperature asked) {
        return missing instanceof Evaluated.OutOfRange<Isotherm> range
                        && range.unit().equals("K")
                ? new PlanRefused.TemperatureOutOfRange(
                        what, asked, new Temperature(range.lowest()), new Temperature(range.highest()))
                : new PlanRefused.NoAnswer(missing.toString());
    }
}
