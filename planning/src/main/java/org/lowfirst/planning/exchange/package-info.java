/**
 * Which supply to send back and when: what each choice returns unused, costs, and leaves in fills, and whether waiting is cheaper.
 *
 * <p>Values in, values out; the same seed gives the same advice. Money is in the currency of the bench.
 */
@NullMarked
package org.lowfirst.planning.exchange;

import org.jspecify.annotations.NullMarked;
