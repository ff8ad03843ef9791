/** How long sessions take to plan. */
@NullMarked
package org.lowfirst.benchmarks.session;

import org.jspecify.annotations.NullMarked;
