/**
 * Honest readings and warm gas at a bench: what the journal's readings come to, where to stop, how long it takes. Asks a bench
 * through {@link org.lowfirst.app.honest.BenchSource} and records nothing.
 */
@NullMarked
package org.lowfirst.app.honest;

import org.jspecify.annotations.NullMarked;
