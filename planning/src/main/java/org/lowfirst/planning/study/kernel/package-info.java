/** The arithmetic of many fills: levels of a bank, random draws, counts. SI doubles, no allocation in loops. */
@NullMarked
package org.lowfirst.planning.study.kernel;

import org.jspecify.annotations.NullMarked;
