/** Sentences for people, from message files. */
@NullMarked
package org.lowfirst.app.words;

import org.jspecify.annotations.NullMarked;
