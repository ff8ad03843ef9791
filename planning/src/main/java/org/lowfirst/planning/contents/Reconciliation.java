package org.lowfirst.planning.contents;

import java.util.Collection;
import java.util.List;

/** Works through the facts of a bench: estimates with spreads, verdicts, and what the gauges have shown about themselves. */
public final class Reconciliation {

    private final Surroundings surroundings;
    private final ContentsAssumptions assumptions;

    public Reconciliation(Surroundings surroundings, ContentsAssumptions assumptions) {
        this.surroundings = surroundings;
        this.assumptions = assumptions;
    }

    /**
     * @param cylinders every supply and bottle the facts name, each name once
     * @param gauges every gauge the facts name, each name once
     * @param facts in order of time; one that is earlier than the one before is refused
     */
    public BenchHistory reconcile(
            Collection<MeteredCylinder> cylinders, Collection<Gauge> gauges, List<BenchFact> facts) {
        Reconciler reconciler = new Reconciler(surroundings, assumptions, cylinders, gauges);
        facts.forEach(reconciler::take);
        return reconciler.history();
    }
}
