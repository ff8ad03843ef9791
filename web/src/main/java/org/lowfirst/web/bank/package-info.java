/** The Bank pages: what the supplies hold, what they read, connecting one. */
@NullMarked
package org.lowfirst.web.bank;

import org.jspecify.annotations.NullMarked;
