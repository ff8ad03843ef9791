/** Questions about the gas behind a reading, and tables of its properties. */
@NullMarked
package org.lowfirst.app.gas;

import org.jspecify.annotations.NullMarked;
