/** Pages about the coming weeks: how long the bank lasts, when to order, what to send back. */
@NullMarked
package org.lowfirst.web.ahead;

import org.jspecify.annotations.NullMarked;
