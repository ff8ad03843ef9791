package org.lowfirst.app.study;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.planning.study.StudyResult;

/** A study that was run from a file. */
public final class StudyDone {

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
        notes.add("Prices are in the currency of the file. Intervals hold the true mean with a confidence of 95 %; they"
                + " count chance, not whether the file is right.");
        notes.add("Bottles come at random around the use of the file, temperatures around its wave; every alternative"
                + " meets the same ones. What is sent back is not refunded.");
        notes.add("The limit is an endless bank of the same supplies; no bank is cheaper per fill at the same rent.");
        notes.add("Rules on storing oxygen, floor space and people's time are not in the cost.");
        return List.copyOf(notes);
    }
}
