package org.lowfirst.web.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Stage;

/**
 * A fill as the journal tells it, corrections left out.
 *
 * @param bottle the bottle
 * @param before what it read before the first stage
 * @param stages what was done
 * @param after what it read last
 * @param finished false when it was broken off
 */
record Told(BottleId bottle, GaugePressure before, List<Stage> stages, GaugePressure after, boolean finished) {

    Told {
        stages = List.copyOf(stages);
    }

    /**
     * @param lines the journal, newest first
     * @param fill id of the fill
     */
    static Optional<Told> find(List<JournalLine> lines, String fill) {
        Fact.@Nullable FillStarted started = null;
        Fact.@Nullable FillFinished finished = null;
        List<Stage> stages = new ArrayList<>();
        for (JournalLine line : lines) {
            Fact fact = line.correctedBy() == null ? counting(line.entry().fact()) : null;
            if (fact instanceof Fact.FillStarted found && found.fill().value().equals(fill)) {
                started = found;
            } else if (fact instanceof Fact.StageRecorded found
                    && found.fill().value().equals(fill)) {
                stages.add(0, found.stage());
            } else if (fact instanceof Fact.FillFinished found
                    && found.fill().value().equals(fill)) {
                finished = found;
            }
        }
        if (started == null) {
            return Optional.empty();
        }
        GaugePressure before = started.before().pressure().gauge();
        GaugePressure last = stages.isEmpty()
                ? before
                : stages.get(stages.size() - 1).bottleAfter().pressure().gauge();
        return Optional.of(new Told(
                started.bottle(),
                before,
                stages,
                finished == null ? last : finished.after().pressure().gauge(),
                finished != null));
    }

    private static @Nullable Fact counting(Fact fact) {
        return fact instanceof Fact.EntryCorrected corrected ? corrected.replacement() : fact;
    }
}
