/** One supply leaves and another takes its place, step by step. */
@NullMarked
package org.lowfirst.web.exchange;

import org.jspecify.annotations.NullMarked;
