/** Prices, who pays, statements, month closes, supplier costs and rent. */
@NullMarked
package org.lowfirst.web.money;

import org.jspecify.annotations.NullMarked;
