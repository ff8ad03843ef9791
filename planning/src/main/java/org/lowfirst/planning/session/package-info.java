/**
 * Several bottles, one bank, one go: which bottle on which supply in which order, so that as many as possible end ready.
 *
 * <p>A plan is an order of bottles for every supply. Each stage ends with equal pressures or at the bottle's stop, and no bottle
 * goes back to a supply of lower rank than one it was on. Apart from that nothing is assumed: bottle by bottle, supply by supply
 * and everything between are plans. Pure functions: no clock, no I/O; the same input and effort give the same plan.
 */
@NullMarked
package org.lowfirst.planning.session;

import org.jspecify.annotations.NullMarked;
