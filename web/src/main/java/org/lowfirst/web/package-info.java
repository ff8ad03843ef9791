/** Serves the pages of one bench on the loopback address. Entry point: {@link org.lowfirst.web.WebApplication}. */
@NullMarked
package org.lowfirst.web;

import org.jspecify.annotations.NullMarked;
