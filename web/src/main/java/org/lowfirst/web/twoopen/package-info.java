/** Two supplies that were open together. */
@NullMarked
package org.lowfirst.web.twoopen;

import org.jspecify.annotations.NullMarked;
