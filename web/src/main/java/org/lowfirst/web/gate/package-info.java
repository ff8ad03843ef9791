/** What stands before a fill: the verdict on a bottle, the look at it, what a second person takes on. */
@NullMarked
package org.lowfirst.web.gate;

import org.jspecify.annotations.NullMarked;
