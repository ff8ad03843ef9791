/**
 * Files that people write, as text with places: every word keeps line and column, so that each problem can be shown under the
 * line it is in, and all problems are collected.
 */
@NullMarked
package org.lowfirst.app.file;

import org.jspecify.annotations.NullMarked;
