/**
 * What is in the cylinders, how well that is known, and what a surprise means.
 *
 * <p>Readings of gauges with a stated class become estimates of the amount of gas with a spread; a filter carries them through
 * stages and corrects them by later readings; sequential tests tell a leak from a cold morning, a wrong volume from a wrong
 * valve, and a bad gauge from both. Values in, values out: no clock, no I/O but two resource files of assumptions and limits.
 * The model, its assumptions and its measured operating characteristics are in docs/estimates.md.
 */
@NullMarked
package org.lowfirst.planning.contents;

import org.jspecify.annotations.NullMarked;
