/** Papers to print: labels, tags, sheets, records, statements and cards, as PDF. Black on white; nothing means by colour. */
@NullMarked
package org.lowfirst.app.paper;

import org.jspecify.annotations.NullMarked;
