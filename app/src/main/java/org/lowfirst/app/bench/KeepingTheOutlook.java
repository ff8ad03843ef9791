package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.Outlook;
import org.lowfirst.station.OutlookFact;

/** Keeps what a bench looks ahead with. */
public final class KeepingTheOutlook {

    private final Recorder recorder;

    KeepingTheOutlook(Recorder recorder) {
        this.recorder = recorder;
    }

    /** @throws java.util.NoSuchElementException when there is no such bench */
    public Outlook outlook(BenchId bench) {
        return recorder.getState(bench).bench().areas().outlook();
    }

    /** Keeps figures, plans or drops a happening, or says that supplies were ordered. */
    public Recording enter(BenchId bench, OutlookFact fact, Submission submission) {
        return recorder.record(bench, new Enter(fact), submission);
    }
}
