/**
 * The bench: its equipment, its rules, and the facts in its journal. {@code decide} answers a command with facts or a
 * refusal; {@code evolve} folds entries into the state. Pure: clock and ids come in with the commands, gas is counted
 * elsewhere.
 */
@NullMarked
package org.lowfirst.station;

import org.jspecify.annotations.NullMarked;
