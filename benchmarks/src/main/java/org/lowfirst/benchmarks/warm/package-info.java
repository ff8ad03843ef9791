/** What warm stages, rests and plans cost. */
@NullMarked
package org.lowfirst.benchmarks.warm;

import org.jspecify.annotations.NullMarked;
