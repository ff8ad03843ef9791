/** Benchmarks of the gas module. */
@NullMarked
package org.lowfirst.benchmarks.gas;

import org.jspecify.annotations.NullMarked;
