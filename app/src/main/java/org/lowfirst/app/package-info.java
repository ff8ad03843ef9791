@NullMarked
package org.lowfirst.app;

import org.jspecify.annotations.NullMarked;
