/** The marking of a bottle: typed from its stamp, shown part by part, completed by hand, confirmed. */
@NullMarked
package org.lowfirst.web.stamp;

import org.jspecify.annotations.NullMarked;
