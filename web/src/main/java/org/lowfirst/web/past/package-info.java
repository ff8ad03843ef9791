/** A whole fill entered afterwards. */
@NullMarked
package org.lowfirst.web.past;

import org.jspecify.annotations.NullMarked;
