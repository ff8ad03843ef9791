package org.lowfirst.app.bench;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.journal.BenchRow;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.ChangeSettings;
import org.lowfirst.station.Command.OpenBench;
import org.lowfirst.station.Settings;

/** Opens benches, lists them, and changes what they are set to. Reads throw when the database fails. */
public final class OpeningABench {

    private final Recorder recorder;

    OpeningABench(Recorder recorder) {
        this.recorder = recorder;
    }

    /** The benches in this database, oldest first. */
    public List<BenchSummary> listBenches() {
        return recorder.journal().listBenches().stream()
                .flatMap(row -> recorder.findState(row.id()).map(state -> summary(row, state)).stream())
                .toList();
    }

    private static BenchSummary summary(BenchRow row, BenchState state) {
        return new BenchSummary(
                row.id(),
                state.bench().settings().name(),
                row.demo(),
                state.head().seq());
    }

    /** The bench as it stands now. */
    public Optional<Bench> findBench(BenchId bench) {
        return recorder.findState(bench).map(BenchState::bench);
    }

    public Recording open(BenchId bench, Settings settings, Submission submission) {
        return recorder.record(bench, new OpenBench(settings), submission);
    }

    public Recording changeSettings(BenchId bench, Settings settings, Submission submission) {
        return recorder.record(bench, new ChangeSettings(settings), submission);
    }
}
