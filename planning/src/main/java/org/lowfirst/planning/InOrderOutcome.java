package org.lowfirst.planning;

/** What came of planning several fills one after another. */
public sealed interface InOrderOutcome permits PlansInOrder, PlanRefused {}
