package org.lowfirst.planning.session;

/** What came of planning a session. */
public sealed interface SessionOutcome permits SessionPlan, SessionRefused {}
