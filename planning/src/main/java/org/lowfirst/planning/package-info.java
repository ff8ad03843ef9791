@NullMarked
package org.lowfirst.planning;

import org.jspecify.annotations.NullMarked;
