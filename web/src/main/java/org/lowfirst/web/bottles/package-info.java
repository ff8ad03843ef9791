/** The Bottles pages: the register of bottles. */
@NullMarked
package org.lowfirst.web.bottles;

import org.jspecify.annotations.NullMarked;
