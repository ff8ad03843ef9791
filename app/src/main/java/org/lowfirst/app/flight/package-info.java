/**
 * Oxygen for a flight from a file: a flight file in YAML, with its track if it names one, becomes a request; the plan becomes
 * JSON or a sheet.
 */
@NullMarked
package org.lowfirst.app.flight;

import org.jspecify.annotations.NullMarked;
