@NullMarked
package org.lowfirst.cli;

import org.jspecify.annotations.NullMarked;
