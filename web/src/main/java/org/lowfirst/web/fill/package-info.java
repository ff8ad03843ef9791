/** The Fill pages: choose a bottle, see the plan, follow the steps, see what happened. */
@NullMarked
package org.lowfirst.web.fill;

import org.jspecify.annotations.NullMarked;
