/**
 * Filling with heat: two gas volumes with lumped walls, real gas, flow through a valve or at a given rise of the gauge; and gas
 * at rest coming to the temperature of the surroundings. State in, state out; no clock, no I/O but its own resource files.
 *
 * <p>The equations are in docs/warm.md.
 */
@NullMarked
package org.lowfirst.transfer.warm;

import org.jspecify.annotations.NullMarked;
