package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.LocalHelp;

/** Keeps what the emergency card says of the place: where it is, where to meet, whom to call. */
public final class KeepingLocalHelp {

    private final Recorder recorder;

    KeepingLocalHelp(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * As it stands; without numbers at first.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public LocalHelp help(BenchId bench) {
        return recorder.getState(bench).bench().areas().care().help();
    }

    /** Under which address other machines reach the program; empty when nobody said. */
    public String address(BenchId bench) {
        return recorder.getState(bench).bench().areas().care().address();
    }

    public Recording reachAt(BenchId bench, String address, Submission submission) {
        return recorder.record(bench, new Enter(new CareFact.AddressSet(address)), submission);
    }

    public Recording set(BenchId bench, LocalHelp help, Submission submission) {
        return recorder.record(bench, new Enter(new CareFact.EmergencyCardSet(help)), submission);
    }
}
