/**
 * What fills are charged, what the supplier costs, and whether the two add up. Money is decimal and exact; every rounding is a
 * named rule, and a correction is a line of its own.
 */
@NullMarked
package org.lowfirst.station.charges;

import org.jspecify.annotations.NullMarked;
