/** What readings come to, as people see it: a verdict in words and a shape, a number with its spread. */
@NullMarked
package org.lowfirst.web.verdict;

import org.jspecify.annotations.NullMarked;
