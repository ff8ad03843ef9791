package org.lowfirst.planning.session;

/**
 * A plan that brings every bottle it takes on to its stop.
 *
 * @param layout the plan
 * @param loss_mol gas above the highest stop it uses up [mol]
 */
record Candidate(Layout layout, double loss_mol) {}
