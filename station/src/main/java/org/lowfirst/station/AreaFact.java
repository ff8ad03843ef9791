package org.lowfirst.station;

import java.util.List;

/** A fact of one area of the bench that keeps a state of its own, see {@link Areas}. */
public sealed interface AreaFact extends Fact
        permits GateFact, CrewFact, MoneyFact, CareFact, StandFact, SessionFact, OutlookFact {

    /** The cylinders it is about, which must be known. */
    default List<CylinderId> cylinders() {
        return List.of();
    }
}
