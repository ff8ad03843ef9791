package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * What one rule says about one cylinder.
 *
 * @param rule the rule that decided
 * @param basis rule the limit came from when that is another, e.g. the test interval behind "past due"
 * @param advice what to do
 * @param measured what was found
 * @param limit what is allowed
 * @param override whether this refusal may be set aside; {@link OverridePolicy#NEVER} when it is none
 */
public record Finding(
        RuleHeading rule,
        @Nullable RuleHeading basis,
        Verdict verdict,
        Advice advice,
        Measure measured,
        Measure limit,
        OverridePolicy override) {

    static Finding allow(RuleHeading rule, Measure measured, Measure limit) {
        return new Finding(rule, null, Verdict.ALLOW, Advice.NOTHING_TO_DO, measured, limit, OverridePolicy.NEVER);
    }

    static Finding warn(RuleHeading rule, Advice advice, Measure measured, Measure limit) {
        return new Finding(rule, null, Verdict.ALLOW_WITH_WARNING, advice, measured, limit, OverridePolicy.NEVER);
    }

    static Finding refuse(RuleHeading rule, Advice advice, Measure measured, Measure limit) {
        return new Finding(rule, null, Verdict.REFUSE, advice, measured, limit, rule.override());
    }

    Finding basedOn(RuleHeading other) {
        return new Finding(rule, other, verdict, advice, measured, limit, override);
    }

    Finding withoutOverride() {
        return new Finding(rule, basis, verdict, advice, measured, limit, OverridePolicy.NEVER);
    }

    public boolean refuses() {
        return verdict == Verdict.REFUSE;
    }

    /** Days or fills left before the limit; negative beyond it; {@link Measure#NOTHING} for other measures. */
    public Measure left() {
        if (measured instanceof Measure.OfDate day && limit instanceof Measure.OfDate last) {
            return new Measure.OfDays(daysBetween(day.date(), last.date()));
        }
        if (measured instanceof Measure.OfFills used && limit instanceof Measure.OfFills allowed) {
            return new Measure.OfFills(allowed.fills() - used.fills());
        }
        return Measure.NOTHING;
    }

    private static long daysBetween(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to);
    }
}
