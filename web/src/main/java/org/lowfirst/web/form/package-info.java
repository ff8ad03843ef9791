/** What people type: read, checked, and kept when it is refused. */
@NullMarked
package org.lowfirst.web.form;

import org.jspecify.annotations.NullMarked;
