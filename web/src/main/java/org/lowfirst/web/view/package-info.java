/** How a page record becomes HTML. */
@NullMarked
package org.lowfirst.web.view;

import org.jspecify.annotations.NullMarked;
