package org.lowfirst.planning.exchange;

import org.lowfirst.planning.study.Objection;

/** What came of asking for advice. */
public sealed interface ExchangeOutcome permits ExchangeAdvice, ExchangeOutcome.Refused {

    /** Nothing was computed. */
    record Refused(Objection why) implements ExchangeOutcome {}
}
