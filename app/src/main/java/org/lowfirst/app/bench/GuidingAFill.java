package org.lowfirst.app.bench;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;

/** Guides a fill valve by valve and records what happens. Each stage is an entry of its own. */
public interface GuidingAFill {

    Recording start(BenchId bench, StartFill command, Submission submission);

    /**
     * What to show now.
     *
     * @param position where the client stands; null when it does not know, then the guide asks for the valves
     */
    Guide guide(BenchId bench, @Nullable Position position);

    /** A reading that differs from the plan is taken as what happened; the guide goes on from it. */
    Recording recordStage(BenchId bench, RecordStage command, Submission submission);

    Recording finish(BenchId bench, FinishFill command, Submission submission);

    Recording abandon(BenchId bench, AbandonFill command, Submission submission);

    /** A whole fill entered afterwards. */
    Recording recordFill(BenchId bench, RecordFill command, Submission submission);
}
