package org.lowfirst.web.workplace;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Recording.NotRecorded;
import org.lowfirst.app.bench.Recording.NotStored;
import org.lowfirst.app.bench.Recording.Recorded;
import org.lowfirst.gas.Digits;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
import org.lowfirst.station.Stated;
import org.lowfirst.station.StatedQuantity;
import org.lowfirst.station.StatedTime;
import org.lowfirst.web.figures.Times;
import org.lowfirst.web.words.StorageWords;
import org.lowfirst.web.words.Words;

/** Reads what came of sending something to a bench. */
public final class Answers {

    private Answers() {}

    /** Number of the last entry made, or nothing when none was. */
    public static Optional<Long> entry(Recording recording) {
        return recording instanceof Recorded recorded && !recorded.entries().isEmpty()
                ? Optional.of(
                        recorded.entries().get(recorded.entries().size() - 1).seq())
                : Optional.empty();
    }

    /** Why nothing was entered, in one or two sentences; empty when it was. */
    static String fault(Recording recording, Words words, Times times) {
        if (recording instanceof NotRecorded not) {
            return words(not.refused(), words, times);
        }
        return recording instanceof NotStored not ? StorageWords.of(not.trouble(), words) : "";
    }

    /** The rule that was broken, if one was. */
    public static Optional<Rule> rule(Recording recording) {
        return recording instanceof NotRecorded not ? Optional.of(not.refused().rule()) : Optional.empty();
    }

    /** Whether the person may insist. */
    public static boolean confirmable(Recording recording) {
        return recording instanceof NotRecorded not && not.refused().confirmable();
    }

    private static String words(Refused refused, Words words, Times times) {
        return words.of(
                "rule." + refused.rule().name().toLowerCase(Locale.ROOT),
                refused.subject(),
                shown(refused.measured(), words, times),
                shown(refused.limit(), words, times));
    }

    private static String shown(@Nullable Stated stated, Words words, Times times) {
        if (stated == null) {
            return "";
        }
        if (stated instanceof StatedTime time) {
            return times.full(time.at());
        }
        StatedQuantity quantity = (StatedQuantity) stated;
        return Digits.in(words.locale()).plain(quantity.value()) + " " + quantity.symbol();
    }
}
