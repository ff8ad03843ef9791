package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.TakeReading;

/** Takes what the gauges show. */
public final class TakingReadings {

    private final Recorder recorder;

    TakingReadings(Recorder recorder) {
        this.recorder = recorder;
    }

    public Recording take(BenchId bench, TakeReading command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
