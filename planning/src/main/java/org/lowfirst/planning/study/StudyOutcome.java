package org.lowfirst.planning.study;

/** What came of a study. */
public sealed interface StudyOutcome permits StudyResult, StudyOutcome.Refused {

    /** Nothing was simulated. */
    record Refused(Objection why) implements StudyOutcome {}
}
