/** Looking ahead from a file: reading it, and writing the forecast of a file or a bench for people and programs. */
@NullMarked
package org.lowfirst.app.ahead;

import org.jspecify.annotations.NullMarked;
