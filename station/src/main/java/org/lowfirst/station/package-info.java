@NullMarked
package org.lowfirst.station;

import org.jspecify.annotations.NullMarked;
