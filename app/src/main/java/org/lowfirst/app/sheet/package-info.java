/** Writing results: numbers, readings and paragraphs for people, JSON for programs. */
@NullMarked
package org.lowfirst.app.sheet;

import org.jspecify.annotations.NullMarked;
