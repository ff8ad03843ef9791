package org.lowfirst.planning.camp;

import org.lowfirst.planning.study.Objection;

/** What came of planning a camp. */
public sealed interface CampOutcome permits CampPlan, CampOutcome.Refused {

    /** Nothing was computed. */
    record Refused(Objection why) implements CampOutcome {}
}
