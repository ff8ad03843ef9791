package org.lowfirst.app.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lowfirst.planning.study.AlternativeResult;
import org.lowfirst.planning.study.StudyResult;

/** A study that was run from a file. */
public final class StudyDone {

    /** Missed fills of this share of the fills made are few. */
    private static final double LITTLE = 0.01;

    private final StudyFile file;
    private final StudyResult result;

    StudyDone(StudyFile file, StudyResult result) {
        this.file = file;
        this.result = result;
    }

    /** Whether all runs that were asked for were done. */
    public boolean whole() {
        return result.runs() == result.runsAsked();
    }

    StudyFile file() {
        return file;
    }

    StudyResult result() {
        return result;
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!whole()) {
            notes.add("The study was ended after " + result.runs() + " of " + result.runsAsked()
                    + " runs; intervals are wider than they would be.");
        }
        gasFromBefore(notes);
        missedForNothing(notes);
        notes.add("Prices are in the currency of the file. Intervals hold the true mean with a confidence of 95 %; they"
                + " count chance, not whether the file is right.");
        notes.add("Bottles come at random around the use of the file, temperatures around its wave; every alternative"
                + " meets the same ones. What is sent back is not refunded.");
        notes.add(
                "The limit is an endless bank of the same supplies that finishes every bottle a full bank can. A bank may"
                        + " come out below it where it leaves unfinished the bottles that take most gas, or lives on gas from"
                        + " before the counted years.");
        notes.add("Rules on storing oxygen, floor space and people's time are not in the cost.");
        return List.copyOf(notes);
    }

    private void gasFromBefore(List<String> notes) {
        for (AlternativeResult one : result.alternatives()) {
            double share = one.usage().gasFromBefore();
            if (one.usage().tooShort()) {
                notes.add(String.format(
                        Locale.ROOT,
                        share > 0.0
                                ? "%s: %.0f %% of the gas used was there before the counted years and is not paid for in"
                                        + " them. Its cost per fill is too low; count more years."
                                : "%s: the bank holds more at the end of the counted years than before them, %.0f %% of"
                                        + " the gas used. Its cost per fill is too high; count more years.",
                        one.alternative().name(),
                        100.0 * Math.abs(share)));
            }
        }
    }

    /** Where leaving bottles unfinished is free, it looks cheap. */
    private void missedForNothing(List<String> notes) {
        boolean missed = result.alternatives().stream()
                .anyMatch(one -> one.usage().missedPerYear().mean()
                        > LITTLE * one.usage().fillsPerYear().mean());
        if (missed && file.request().prices().perMissedFill() == 0.0) {
            notes.add("A missed fill costs nothing in this file, so an alternative that leaves many bottles unfinished"
                    + " looks cheap. Compare the missed fills too, or give missed_fill a price.");
        }
    }
}
