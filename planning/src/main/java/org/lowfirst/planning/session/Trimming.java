package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Leaves out stages that every bottle can do without, for people who count changes before gas. A supply that is used first keeps
 * its stages.
 */
final class Trimming {

    private final Setting setting;
    private final Problem problem;

    Trimming(Setting setting, Problem problem) {
        this.setting = setting;
        this.problem = problem;
    }

    /** The plan itself, and each plan on the way to one from which no stage can go without a change more. */
    List<Scored> trimmed(Candidate candidate) {
        List<Scored> found = new ArrayList<>();
        Scored now = Scored.of(setting, problem, candidate);
        while (now != null) {
            found.add(now);
            now = oneFewer(now);
        }
        return found;
    }

    private @Nullable Scored oneFewer(Scored from) {
        Layout layout = from.candidate().layout();
        Scored best = null;
        for (int s = problem.usedFirst; s < layout.supplies(); s++) {
            for (int k = 0; k < layout.on(s); k++) {
                Layout shorter = layout.without(s, k);
                Replay replay = Replay.of(problem, shorter);
                if (replay.firstShort() < 0) {
                    Scored scored = Scored.of(setting, problem, new Candidate(shorter, replay.loss_mol()));
                    best = best == null || scored.calendar().changes < best.calendar().changes ? scored : best;
                }
            }
        }
        return best == null || best.calendar().changes > from.calendar().changes ? null : best;
    }
}
