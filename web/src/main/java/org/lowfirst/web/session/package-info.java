/** Pages about several bottles on one bank. */
@NullMarked
package org.lowfirst.web.session;

import org.jspecify.annotations.NullMarked;
