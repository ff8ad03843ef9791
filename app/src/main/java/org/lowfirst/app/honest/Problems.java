package org.lowfirst.app.honest;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.ReadingOutcome;
import org.lowfirst.planning.warm.WarmRefusalWords;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.WarmRefusal;

/** Refusals of the computations as problems for people. */
final class Problems {

    private final Wording wording;

    Problems(Wording wording) {
        this.wording = wording;
    }

    <T> Outcome<T> outcome(Answer<T> answer, ShownUnits units) {
        return answer instanceof Answer.Given<T> given
                ? Outcome.of(given.value())
                : Outcome.declined(of(((Answer.Refused<T>) answer).refusal(), units));
    }

    static Problem of(WarmRefusal refusal, ShownUnits units) {
        String words = WarmRefusalWords.of(refusal, units);
        int advice = WarmRefusalWords.adviceIn(words, units);
        return new Problem(
                refusal.code(),
                advice < 0 ? words : words.substring(0, advice).strip(),
                measured(refusal, units),
                limit(refusal, units),
                advice < 0 ? "" : words.substring(advice),
                about(refusal));
    }

    private static @Nullable String about(WarmRefusal refusal) {
        if (refusal instanceof WarmRefusal.TemperatureOutOfRange r) {
            return r.what();
        } else if (refusal instanceof WarmRefusal.PressureOutOfRange r) {
            return r.what();
        } else if (refusal instanceof WarmRefusal.NumberOutOfRange r) {
            return r.what();
        }
        return refusal instanceof WarmRefusal.MustRise r ? r.what() : null;
    }

    private static @Nullable String measured(WarmRefusal refusal, ShownUnits units) {
        if (refusal instanceof WarmRefusal.TemperatureOutOfRange r) {
            return units.show(r.measured());
        } else if (refusal instanceof WarmRefusal.PressureOutOfRange r) {
            return units.show(r.measured());
        } else if (refusal instanceof WarmRefusal.NumberOutOfRange r) {
            return number(r.measured(), r.unit(), units.language());
        } else if (refusal instanceof WarmRefusal.MustRise r) {
            return units.show(r.measured());
        } else if (refusal instanceof WarmRefusal.SequenceFalls r) {
            return units.show(r.measured());
        } else if (refusal instanceof WarmRefusal.TimeGoesBack r) {
            return number(r.measured_s(), "s", units.language());
        }
        return refusal instanceof WarmRefusal.NotReachable r ? number(r.best(), r.unit(), units.language()) : null;
    }

    private static @Nullable String limit(WarmRefusal refusal, ShownUnits units) {
        if (refusal instanceof WarmRefusal.TemperatureOutOfRange r) {
            boolean low = r.measured().compareTo(r.lowest()) < 0;
            return units.show(low ? r.lowest() : r.highest());
        } else if (refusal instanceof WarmRefusal.PressureOutOfRange r) {
            boolean low = r.measured().compareTo(r.lowest()) < 0;
            return units.show(low ? r.lowest() : r.highest());
        } else if (refusal instanceof WarmRefusal.NumberOutOfRange r) {
            return number(r.measured() < r.lowest() ? r.lowest() : r.highest(), r.unit(), units.language());
        } else if (refusal instanceof WarmRefusal.MustRise r) {
            return units.show(r.mustBeAbove());
        } else if (refusal instanceof WarmRefusal.SequenceFalls r) {
            return units.show(r.before());
        } else if (refusal instanceof WarmRefusal.TimeGoesBack r) {
            return number(r.before_s(), "s", units.language());
        }
        return refusal instanceof WarmRefusal.NotReachable r ? number(r.wanted(), r.unit(), units.language()) : null;
    }

    /** @param what what was read, as people call it */
    Problem of(ReadingOutcome.Refused refused, String what) {
        String code = refused.rule().name().toLowerCase(Locale.ROOT).replace('_', '-');
        boolean valued = !refused.unit().isEmpty() && !refused.unit().startsWith("s ");
        String measured = valued ? number(refused.measured(), refused.unit(), wording.locale()) : null;
        String limit = valued ? number(refused.limit(), refused.unit(), wording.locale()) : null;
        String advice = refused.advice().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Problem(
                code,
                wording.text(
                        "refused." + code,
                        Map.of(
                                "what", what,
                                "measured", measured == null ? "" : measured,
                                "limit", limit == null ? "" : limit)),
                measured,
                limit,
                wording.text("refused.advice." + advice, Map.of()),
                null);
    }

    /** A problem worded in the message file under its code. */
    Problem stated(String code, Map<String, String> values) {
        return new Problem(
                code,
                wording.text("problem." + code, values),
                values.get("measured"),
                values.get("limit"),
                wording.text("problem." + code + ".advice", values),
                null);
    }

    private static String number(double value, String unit, Locale language) {
        String digits = String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
        return Digits.in(language).written(digits) + " " + unit;
    }
}
