/** Tables for spreadsheets: what a bench holds as CSV, and bottles read from what people paste or send. */
@NullMarked
package org.lowfirst.app.table;

import org.jspecify.annotations.NullMarked;
