/** How the supplies stand in a row, and how they are connected. */
@NullMarked
package org.lowfirst.web.arrangement;

import org.jspecify.annotations.NullMarked;
