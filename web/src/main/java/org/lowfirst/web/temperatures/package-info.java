/** A page that reads the same gas at other temperatures. */
@NullMarked
package org.lowfirst.web.temperatures;

import org.jspecify.annotations.NullMarked;
