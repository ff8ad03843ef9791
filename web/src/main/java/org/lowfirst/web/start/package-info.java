/** The first page: an offer to set up a bench or load the demo bench, or the benches there are. */
@NullMarked
package org.lowfirst.web.start;

import org.jspecify.annotations.NullMarked;
