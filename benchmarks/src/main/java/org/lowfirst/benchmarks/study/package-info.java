/** Benchmarks of the study. */
@NullMarked
package org.lowfirst.benchmarks.study;

import org.jspecify.annotations.NullMarked;
