package org.lowfirst.app.bench;

import java.util.Optional;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.AllowWarmStop;
import org.lowfirst.station.Command.ForbidWarmStop;
import org.lowfirst.station.WarmStop;

/** Lets the responsible person allow stops above the marked pressure while the gas is warm, or forbid them. */
public final class AllowingWarmStops {

    private final Recorder recorder;

    AllowingWarmStops(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * The permission that stands; empty when there is none, as at first.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Optional<WarmStop> permission(BenchId bench) {
        return Optional.ofNullable(recorder.getState(bench).bench().warmStop());
    }

    public Recording allow(BenchId bench, AllowWarmStop command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording forbid(BenchId bench, ForbidWarmStop command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
