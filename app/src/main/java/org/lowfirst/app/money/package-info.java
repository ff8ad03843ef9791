/**
 * What fills cost and what the supplier takes, worked out from the journal in the order it was written, so that every correction
 * stays to be seen. Start at {@link Books}.
 */
@NullMarked
package org.lowfirst.app.money;

import org.jspecify.annotations.NullMarked;
