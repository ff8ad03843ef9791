/** The Bench pages: what the bench is set to; setting one up. */
@NullMarked
package org.lowfirst.web.settings;

import org.jspecify.annotations.NullMarked;
