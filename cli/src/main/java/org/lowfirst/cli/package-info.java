/**
 * The command line. Picks the use case, hands it what was typed, prints what came of it, and answers with an exit code.
 *
 * <p>Only {@code serve} touches the web module, so that a plan starts in a fraction of a second.
 */
@NullMarked
package org.lowfirst.cli;

import org.jspecify.annotations.NullMarked;
