@NullMarked
package org.lowfirst.transfer;

import org.jspecify.annotations.NullMarked;
