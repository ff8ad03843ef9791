/** The First day page: what a fresh bench still needs, in order. */
@NullMarked
package org.lowfirst.web.firstday;

import org.jspecify.annotations.NullMarked;
