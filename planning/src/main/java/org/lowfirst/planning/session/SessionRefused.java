package org.lowfirst.planning.session;

import org.lowfirst.planning.PlanRefused;

/** Why there is no plan. */
public record SessionRefused(PlanRefused why) implements SessionOutcome {}
