/** What falls due, and the equipment that is looked after. */
@NullMarked
package org.lowfirst.web.due;

import org.jspecify.annotations.NullMarked;
