/**
 * Telling the truth about warm gas: where to stop and what the bottle settles to, a fill on a clock, why valves are opened slowly,
 * and any reading at any temperature.
 *
 * <p>Pure functions of their arguments: no clock, no I/O but resource files, no randomness. What cannot be answered comes back as
 * a value ({@link org.lowfirst.transfer.warm.WarmRefusal}).
 */
@NullMarked
package org.lowfirst.planning.warm;

import org.jspecify.annotations.NullMarked;
