package org.lowfirst.planning;

/** What came of planning one fill. */
public sealed interface PlanOutcome permits FillPlan, PlanRefused {}
