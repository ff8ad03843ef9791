package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.ReadWarmBottle;
import org.lowfirst.station.Command.TakeReading;

/** Takes what the gauges show. */
public final class TakingReadings {

    private final Recorder recorder;

    TakingReadings(Recorder recorder) {
        this.recorder = recorder;
    }

    /** A bottle read shut while its gas was still warm: what it reads once settled is compared with it. */
    public Recording takeWarm(BenchId bench, ReadWarmBottle command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording take(BenchId bench, TakeReading command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
