/**
 * What to do with a bank: one fill now, several in the order given, and what is left afterwards.
 *
 * <p>Pure functions of their arguments: no clock, no I/O, no randomness; the same input gives the same plan. What cannot be
 * planned comes back as a value ({@link org.lowfirst.planning.PlanRefused}), never as an exception. Readings come in and go out
 * as gauge pressures, everything settled at the bench's temperature; inside, gas is counted in moles.
 */
@NullMarked
package org.lowfirst.planning;

import org.jspecify.annotations.NullMarked;
