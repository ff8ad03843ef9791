package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.Collection;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.due.Upkeep;

/** Keeps the equipment that is looked after at an interval. */
public final class KeepingEquipment {

    private final Recorder recorder;

    KeepingEquipment(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * What is looked after, in the order first described.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Collection<Upkeep> list(BenchId bench) {
        return recorder.getState(bench).bench().areas().care().upkeep().values();
    }

    /** A piece of equipment as it is from now on; another with its name is replaced. */
    public Recording describe(BenchId bench, Upkeep upkeep, Submission submission) {
        return enter(bench, new CareFact.UpkeepDescribed(upkeep), submission);
    }

    public Recording done(BenchId bench, String equipment, LocalDate day, Submission submission) {
        return enter(bench, new CareFact.UpkeepDone(equipment, day), submission);
    }

    public Recording end(BenchId bench, String equipment, String reason, Submission submission) {
        return enter(bench, new CareFact.UpkeepEnded(equipment, reason), submission);
    }

    private Recording enter(BenchId bench, CareFact fact, Submission submission) {
        return recorder.record(bench, new Enter(fact), submission);
    }
}
