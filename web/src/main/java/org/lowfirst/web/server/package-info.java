/** The HTTP server: where it listens, whom it answers, what headers it sends. */
@NullMarked
package org.lowfirst.web.server;

import org.jspecify.annotations.NullMarked;
