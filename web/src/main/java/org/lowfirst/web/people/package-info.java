/** The people of a bench: who they are, what they do, until when their training and check-out are good. */
@NullMarked
package org.lowfirst.web.people;

import org.jspecify.annotations.NullMarked;
