/** Quantities and the real-gas properties of one pure gas. Depends on the JDK only; no I/O but its own resource files. */
@NullMarked
package org.lowfirst.gas;

import org.jspecify.annotations.NullMarked;
