package org.lowfirst.app.bench;

import java.util.Comparator;
import java.util.List;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Command.AmendBottle;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.RetireBottle;

/** Keeps the register of bottles. */
public final class RegisteringBottles {

    private static final Comparator<Bottle> ORDER = Comparator.comparing(Bottle::status)
            .thenComparing(bottle -> bottle.details().name(), String.CASE_INSENSITIVE_ORDER);

    private final Recorder recorder;

    RegisteringBottles(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * Bottles in use, by name; then the retired ones.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public List<Bottle> listBottles(BenchId bench) {
        return recorder.getState(bench).bench().listBottles().stream()
                .sorted(ORDER)
                .toList();
    }

    public Recording register(BenchId bench, RegisterBottle command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording amend(BenchId bench, AmendBottle command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording retire(BenchId bench, RetireBottle command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
