/** The sentences about plans, in the languages there are. */
@NullMarked
package org.lowfirst.planning.words;

import org.jspecify.annotations.NullMarked;
