/** The fields supplies and bottles have in common: name, water volume, marked pressure. */
@NullMarked
package org.lowfirst.web.cylinder;

import org.jspecify.annotations.NullMarked;
