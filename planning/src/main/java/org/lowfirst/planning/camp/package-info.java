/**
 * Supplies to take along where no supplier comes: a camp of some days, some pilots and their bottles.
 *
 * <p>Values in, values out; the same seed gives the same plan.
 */
@NullMarked
package org.lowfirst.planning.camp;

import org.jspecify.annotations.NullMarked;
