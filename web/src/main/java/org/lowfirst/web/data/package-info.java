/** The Data page: everything out as tables and journal lines, journals in after a check. */
@NullMarked
package org.lowfirst.web.data;

import org.jspecify.annotations.NullMarked;
