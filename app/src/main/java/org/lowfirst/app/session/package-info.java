/** Sessions from a file: reading it, planning it, and writing what came of it for people and programs. */
@NullMarked
package org.lowfirst.app.session;

import org.jspecify.annotations.NullMarked;
