@NullMarked
package org.lowfirst.benchmarks.contents;

import org.jspecify.annotations.NullMarked;
