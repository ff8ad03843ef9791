/** The pages of a place that lead on to others. */
@NullMarked
package org.lowfirst.web.hub;

import org.jspecify.annotations.NullMarked;
