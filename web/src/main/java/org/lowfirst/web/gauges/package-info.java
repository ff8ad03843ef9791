/** Pages about the gauges of a bench: what each is, and what the journal has taught about it. */
@NullMarked
package org.lowfirst.web.gauges;

import org.jspecify.annotations.NullMarked;
