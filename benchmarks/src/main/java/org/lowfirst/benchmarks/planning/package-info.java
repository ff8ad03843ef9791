/** Benchmarks of the planning and transfer modules. */
@NullMarked
package org.lowfirst.benchmarks.planning;

import org.jspecify.annotations.NullMarked;
