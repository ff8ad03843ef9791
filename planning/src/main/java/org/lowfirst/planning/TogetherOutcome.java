package org.lowfirst.planning;

/** What came of asking what supplies opened together cost. */
public sealed interface TogetherOutcome permits TogetherCost, PlanRefused {}
