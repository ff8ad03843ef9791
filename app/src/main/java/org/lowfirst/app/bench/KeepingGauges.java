package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.app.honest.GaugeNow;
import org.lowfirst.app.honest.JudgingReadings;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.DescribeGauge;
import org.lowfirst.station.Command.RetireGauge;

/** Keeps the gauges of a bench. */
public final class KeepingGauges {

    private final Recorder recorder;
    private final JudgingReadings judging;

    KeepingGauges(Recorder recorder, JudgingReadings judging) {
        this.recorder = recorder;
        this.judging = judging;
    }

    /**
     * The gauges with what the journal has taught about them: those in use, those taken for granted, those no longer in use.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public List<GaugeNow> list(BenchId bench) {
        return judging.history(bench).gauges();
    }

    /** A gauge as it is from now on; another with its name is replaced. */
    public Recording describe(BenchId bench, DescribeGauge command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording retire(BenchId bench, RetireGauge command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
