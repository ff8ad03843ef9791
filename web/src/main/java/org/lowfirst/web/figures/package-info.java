/** Numbers, times and ages as people read them, in the units of the bench. */
@NullMarked
package org.lowfirst.web.figures;

import org.jspecify.annotations.NullMarked;
