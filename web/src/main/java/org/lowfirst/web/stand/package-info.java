/** How a supply stands: its turn, its bank, what came on paper with it. */
@NullMarked
package org.lowfirst.web.stand;

import org.jspecify.annotations.NullMarked;
