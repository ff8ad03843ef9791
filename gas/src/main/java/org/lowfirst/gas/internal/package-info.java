/** How the properties are computed: reader of substance files, Helmholtz evaluator, isotherms, root searches. */
@NullMarked
package org.lowfirst.gas.internal;

import org.jspecify.annotations.NullMarked;
