package org.lowfirst.planning.warm;

import java.util.Locale;
import org.lowfirst.planning.ShownUnits;
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

    private WarmRefusalWords() {}

    public static String of(WarmRefusal refusal, ShownUnits units) {
        if (refusal instanceof TemperatureOutOfRange r) {
            return "The %s (%s) must be %s to %s. Please check the number and its unit."
                    .formatted(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refusal instanceof PressureOutOfRange r) {
            return "The %s (%s) must be %s to %s. Please check the number and its unit."
                    .formatted(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refusal instanceof NumberOutOfRange r) {
            return "The %s (%s %s) must be %s to %s %s. Please check the number and its unit."
                    .formatted(
                            r.what(),
                            number(r.measured()),
                            r.unit(),
                            number(r.lowest()),
                            number(r.highest()),
                            r.unit());
        }
        if (refusal instanceof MustRise r) {
            return "The %s (%s) must be above %s, because gas only goes from high to low. Please check both readings."
                    .formatted(r.what(), units.show(r.measured()), units.show(r.mustBeAbove()));
        }
        if (refusal instanceof SequenceFalls r) {
            return ("Reading %d (%s) is below the one before it (%s), but a gauge rises while a bottle is filled."
                            + " Please check it, or begin again with the readings after the pause.")
                    .formatted(r.place(), units.show(r.measured()), units.show(r.before()));
        }
        return others(refusal);
    }

    private static String others(WarmRefusal refusal) {
        if (refusal instanceof TimeGoesBack r) {
            return ("Reading %d is at %s s, which must be later than the one before it at %s s, and by no more than a"
                            + " week. Please check its time.")
                    .formatted(r.place(), number(r.measured_s()), number(r.before_s()));
        }
        if (refusal instanceof NameMissing r) {
            return "The %s must be named. Please write it down.".formatted(r.what());
        }
        if (refusal instanceof NotReachable r) {
            return ("The %s cannot come to %s %s within the limits that were set; %s %s is the best found."
                            + " Please allow more, or use a fuller supply.")
                    .formatted(r.what(), number(r.wanted()), r.unit(), number(r.best()), r.unit());
        }
        if (refusal instanceof NoAnswer r) {
            return "This could not be computed: " + r.reason() + ". Please check temperatures and pressures.";
        }
        throw new AssertionError("unhandled " + refusal);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%,.2f", value);
        return text.replaceFirst("\\.?0+$", "");
    }
}
