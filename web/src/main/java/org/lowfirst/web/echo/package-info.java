/** Says back how something typed was understood, while it is being typed. */
@NullMarked
package org.lowfirst.web.echo;

import org.jspecify.annotations.NullMarked;
