/** The Journal pages: who entered what and when, and correcting it. */
@NullMarked
package org.lowfirst.web.journal;

import org.jspecify.annotations.NullMarked;
