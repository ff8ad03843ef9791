/**
 * How long the bank lasts: fills and days left with their spread, and when to order.
 *
 * <p>Bottles come at random around a mean that has a level, a factor for each weekday and one for each month, and good and bad
 * days (a gamma-Poisson model); what is known beforehand is a guess that the history outweighs bit by bit. See docs/ahead.md.
 * Values in, values out: no clock, no I/O but one resource file; the same seed gives the same forecast.
 */
@NullMarked
package org.lowfirst.planning.ahead;

import org.jspecify.annotations.NullMarked;
