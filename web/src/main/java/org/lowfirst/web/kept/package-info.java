/** What a bench looks ahead with, kept once: figures, planned events, an order on its way. */
@NullMarked
package org.lowfirst.web.kept;

import org.jspecify.annotations.NullMarked;
