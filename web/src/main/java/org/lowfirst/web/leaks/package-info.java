/** Pages of a timed leak check: read, hold, read again. */
@NullMarked
package org.lowfirst.web.leaks;

import org.jspecify.annotations.NullMarked;
