/**
 * Planning from a file: a plan file in YAML becomes a request, the plan becomes JSON or a sheet for the bench.
 *
 * <p>Reading keeps the place of every word in the file, so that each problem can be shown under the line it is in.
 */
@NullMarked
package org.lowfirst.app.plan;

import org.jspecify.annotations.NullMarked;
