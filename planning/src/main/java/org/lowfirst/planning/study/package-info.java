/**
 * Years of a bench, simulated: bank sizes, exchange habits, supply sizes, prices and demand compared by what a fill costs.
 *
 * <p>Pure functions: no clock, no I/O; randomness comes from the seed of the request alone, so that the same request gives the
 * same answer on any machine and with any number of threads. Money is in the currency of the bench, whatever it is.
 */
@NullMarked
package org.lowfirst.planning.study;

import org.jspecify.annotations.NullMarked;
