/** The page about the oxygen of a flight. */
@NullMarked
package org.lowfirst.web.flight;

import org.jspecify.annotations.NullMarked;
