/** What every page works with: the bench it is about, who is at it, and how a command is sent and answered. */
@NullMarked
package org.lowfirst.web.workplace;

import org.jspecify.annotations.NullMarked;
