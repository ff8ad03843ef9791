/** Whether a squad's bottles are ready to go: floors and wishes, the check at the start of a shift, the list after a call. */
@NullMarked
package org.lowfirst.station.readiness;

import org.jspecify.annotations.NullMarked;
