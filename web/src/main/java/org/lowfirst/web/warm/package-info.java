/** Pages about time and heat: a fill on a clock. */
@NullMarked
package org.lowfirst.web.warm;

import org.jspecify.annotations.NullMarked;
