package org.lowfirst.planning.ahead;

import org.lowfirst.planning.study.Objection;

/** What came of looking ahead. */
public sealed interface AheadOutcome permits Forecast, AheadOutcome.Refused {

    /** Nothing was computed. */
    record Refused(Objection why) implements AheadOutcome {}
}
