/** The page about supplies for a camp. */
@NullMarked
package org.lowfirst.web.camp;

import org.jspecify.annotations.NullMarked;
