/** Planning from a file: a plan file in YAML becomes a request, the plan becomes JSON or a sheet for the bench. */
@NullMarked
package org.lowfirst.app.plan;

import org.jspecify.annotations.NullMarked;
