package org.lowfirst.planning.session;

import java.util.Comparator;
import java.util.List;

/**
 * A candidate with its calendar.
 *
 * @param candidate the plan
 * @param calendar its last stage, with the way there
 */
record Scored(Candidate candidate, Calendar.Way calendar) {

    static Scored of(Setting setting, Problem problem, Candidate candidate) {
        Layout layout = candidate.layout();
        List<Criterion> order = setting.request().order();
        boolean changesFirst = order.indexOf(Criterion.CHANGES) < order.indexOf(Criterion.TIME);
        Calendar calendar = new Calendar(layout, new Reckoning(setting, problem, layout), changesFirst);
        return new Scored(candidate, calendar.best(problem.bottles));
    }

    /** Best first, in the order of criteria the person chose; differences of gas below a step do not count. */
    static Comparator<Scored> by(Problem problem, List<Criterion> order, double best_mol, double step_mol) {
        Comparator<Scored> comparator = Comparator.comparing((Scored s) -> 0);
        for (Criterion criterion : order) {
            comparator = comparator.thenComparing(
                    switch (criterion) {
                        case PRIORITY, WISH ->
                            Comparator.comparing(
                                    s -> Choice.of(s.candidate.layout().stops()),
                                    new ChoiceOrder(problem, List.of(criterion)));
                        case GAS ->
                            Comparator.comparing(s ->
                                    Math.max(0.0, Math.ceil((s.candidate.loss_mol() - best_mol) / step_mol - 1.0)));
                        case CHANGES -> Comparator.comparingInt((Scored s) -> s.calendar.changes);
                        case TIME -> Comparator.comparingDouble((Scored s) -> s.calendar.clock_s);
                    });
        }
        return comparator
                .thenComparing(s -> s.candidate.loss_mol())
                .thenComparing(s -> s.candidate.layout().toString());
    }
}
