/** The journal on disk: append-only, hash-chained, one table. Commits are durable before they are acknowledged. */
@NullMarked
package org.lowfirst.app.journal;

import org.jspecify.annotations.NullMarked;
