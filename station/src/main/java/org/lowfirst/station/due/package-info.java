/**
 * What falls due: cylinder tests, ends of life, hoses, gauges and people's check-outs, as a list and as a calendar to
 * subscribe to.
 */
@NullMarked
package org.lowfirst.station.due;

import org.jspecify.annotations.NullMarked;
