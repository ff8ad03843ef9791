/** Whether the bottles are ready to go: the check of a shift, what to fill after a call, groups of bottles. */
@NullMarked
package org.lowfirst.web.ready;

import org.jspecify.annotations.NullMarked;
