/** Camps from a file: reading it, and writing what came of it for people and programs. */
@NullMarked
package org.lowfirst.app.camp;

import org.jspecify.annotations.NullMarked;
