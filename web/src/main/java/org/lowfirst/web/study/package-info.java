/** Pages that compare ways of running a bench over simulated years. */
@NullMarked
package org.lowfirst.web.study;

import org.jspecify.annotations.NullMarked;
