/** Studies from a file: reading it, running it, and writing what came of it for people and programs. */
@NullMarked
package org.lowfirst.app.study;

import org.jspecify.annotations.NullMarked;
