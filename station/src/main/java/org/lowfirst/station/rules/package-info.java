/**
 * The gate before a fill: rules as data, the facts of one cylinder, and the judgement of the one by the other.
 *
 * <p>Values in, values out. Today is passed in; pressures at other temperatures are passed in too, computed elsewhere with
 * the real gas.
 */
@NullMarked
package org.lowfirst.station.rules;

import org.jspecify.annotations.NullMarked;
