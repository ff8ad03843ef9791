package org.lowfirst.planning.session;

/** What a layout comes to. */
final class Replay {

    final double[] r;
    final double[] q;
    private final Problem problem;
    private final Layout layout;

    private Replay(Problem problem, Layout layout) {
        this.problem = problem;
        this.layout = layout;
        r = problem.supply_molPerM3.clone();
        q = problem.bottle_molPerM3.clone();
    }

    /** Follows the layout supply by supply; a stage in which nothing would move is passed over. */
    static Replay of(Problem problem, Layout layout) {
        Replay replay = new Replay(problem, layout);
        for (int s = 0; s < layout.supplies(); s++) {
            for (int k = 0; k < layout.on(s); k++) {
                int b = layout.bottle(s, k);
                if (!Problem.at(replay.q[b], layout.stop(b)) && problem.gives(replay.r[s], s, replay.q[b])) {
                    problem.stage(replay.r, replay.q, s, b, layout.stop(b));
                }
            }
        }
        return replay;
    }

    /** First bottle that does not come to its stop, -1 when all do. */
    int firstShort() {
        for (int b = 0; b < q.length; b++) {
            if (!Problem.at(q[b], layout.stop(b))) {
                return b;
            }
        }
        return -1;
    }

    /** Gas above the highest stop used up [mol]. */
    double loss_mol() {
        return problem.usable_mol(problem.supply_molPerM3) - problem.usable_mol(r);
    }
}
