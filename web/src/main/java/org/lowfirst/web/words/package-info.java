/** The words of the screens, kept apart so that a second language can be added. */
@NullMarked
package org.lowfirst.web.words;

import org.jspecify.annotations.NullMarked;
