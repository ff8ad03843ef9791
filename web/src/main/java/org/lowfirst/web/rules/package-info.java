/** The rule book of a bench: in words, as text to edit, and its earlier versions. */
@NullMarked
package org.lowfirst.web.rules;

import org.jspecify.annotations.NullMarked;
