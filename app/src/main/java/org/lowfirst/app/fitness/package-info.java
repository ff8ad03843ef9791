/**
 * What the gate says of a bottle, a rule book and a stamp, in words: verdicts, what was measured, the limit, what is left, what to do,
 * and where the rule comes from.
 */
@NullMarked
package org.lowfirst.app.fitness;

import org.jspecify.annotations.NullMarked;
