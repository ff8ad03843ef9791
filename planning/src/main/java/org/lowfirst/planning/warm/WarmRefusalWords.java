package org.lowfirst.planning.warm;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.gas.Digits;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.words.Phrases;
import org.lowfirst.transfer.warm.WarmRefusal;
import org.lowfirst.transfer.warm.WarmRefusal.MustRise;
import org.lowfirst.transfer.warm.WarmRefusal.NameMissing;
import org.lowfirst.transfer.warm.WarmRefusal.NoAnswer;
import org.lowfirst.transfer.warm.WarmRefusal.NotReachable;
import org.lowfirst.transfer.warm.WarmRefusal.NumberOutOfRange;
import org.lowfirst.transfer.warm.WarmRefusal.PressureOutOfRange;
import org.lowfirst.transfer.warm.WarmRefusal.SequenceFalls;
import org.lowfirst.transfer.warm.WarmRefusal.TemperatureOutOfRange;
import org.lowfirst.transfer.warm.WarmRefusal.TimeGoesBack;

/** Refusals of warm plans as sentences: what is wrong, the measured value and the limit with units, what to do. */
public final class WarmRefusalWords {

    private static final String RANGE = "refused.out-of-range";

    private final ShownUnits units;
    private final Phrases phrases;

    private WarmRefusalWords(ShownUnits units) {
        this.units = units;
        phrases = Phrases.in(units.language());
    }

    public static String of(WarmRefusal refusal, ShownUnits units) {
        return new WarmRefusalWords(units).of(refusal);
    }

    /** Where in the sentences {@code words} it begins to say what to do; -1 when they do not say it. */
    public static int adviceIn(String words, ShownUnits units) {
        return words.lastIndexOf(Phrases.in(units.language()).text("refused.please", Map.of()) + " ");
    }

    private String of(WarmRefusal refusal) {
        if (refusal instanceof TemperatureOutOfRange r) {
            return range(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refusal instanceof PressureOutOfRange r) {
            return range(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refusal instanceof NumberOutOfRange r) {
            return range(
                    r.what(),
                    number(r.measured()) + " " + r.unit(),
                    number(r.lowest()),
                    number(r.highest()) + " " + r.unit());
        }
        if (refusal instanceof MustRise r) {
            return phrases.text(
                    "warm.must-rise",
                    Map.of(
                            "what", phrases.noun(r.what()),
                            "measured", units.show(r.measured()),
                            "limit", units.show(r.mustBeAbove())));
        }
        if (refusal instanceof SequenceFalls r) {
            return phrases.text(
                    "warm.sequence-falls",
                    Map.of(
                            "place", Integer.toString(r.place()),
                            "measured", units.show(r.measured()),
                            "before", units.show(r.before())));
        }
        return others(refusal);
    }

    private String others(WarmRefusal refusal) {
        if (refusal instanceof TimeGoesBack r) {
            return phrases.text(
                    "warm.time-goes-back",
                    Map.of(
                            "place", Integer.toString(r.place()),
                            "measured", number(r.measured_s()),
                            "before", number(r.before_s())));
        }
        if (refusal instanceof NameMissing r) {
            return phrases.text("warm.name-missing", Map.of("what", phrases.noun(r.what())));
        }
        if (refusal instanceof NotReachable r) {
            return phrases.text(
                    "warm.not-reachable",
                    Map.of(
                            "what", phrases.noun(r.what()),
                            "wanted", number(r.wanted()) + " " + r.unit(),
                            "best", number(r.best()) + " " + r.unit()));
        }
        if (refusal instanceof NoAnswer r) {
            return phrases.text("warm.no-answer", Map.of("reason", r.reason()));
        }
        throw new AssertionError("unhandled " + refusal);
    }

    private String range(String what, String measured, String lowest, String highest) {
        return phrases.text(
                RANGE, Map.of("what", phrases.noun(what), "measured", measured, "lowest", lowest, "highest", highest));
    }

    private String number(double value) {
        return Digits.in(units.language())
                .written(String.format(Locale.ROOT, "%,.2f", value).replaceFirst("\\.?0+$", ""));
    }
}
