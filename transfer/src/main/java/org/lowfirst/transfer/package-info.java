/**
 * Gas moved between rigid vessels at one temperature: state in, state out. No clock, no I/O, no logging.
 *
 * <p>Everything here is a value: immutable and thread-safe. Gas is counted in moles, so that what one vessel loses another
 * gains. Pressures come in only where a caller asks for them, through an {@link org.lowfirst.gas.Isotherm}.
 */
@NullMarked
package org.lowfirst.transfer;

import org.jspecify.annotations.NullMarked;
