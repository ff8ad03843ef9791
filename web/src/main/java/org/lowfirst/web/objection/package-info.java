/** Puts what the planner objects to beside the field it is about. */
@NullMarked
package org.lowfirst.web.objection;

import org.jspecify.annotations.NullMarked;
