/** The Papers page: what can be printed, and what the emergency card says. */
@NullMarked
package org.lowfirst.web.papers;

import org.jspecify.annotations.NullMarked;
