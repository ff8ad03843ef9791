/** Pictures drawn as SVG on the server, each with a text twin. */
@NullMarked
package org.lowfirst.web.picture;

import org.jspecify.annotations.NullMarked;
