package org.lowfirst.app.honest;

import org.jspecify.annotations.Nullable;

/**
 * What is wrong with what was asked or read.
 *
 * @param code stable, lower case with hyphens
 * @param sentence what is wrong, with the values and their units
 * @param measured the value found, with its unit; null when there is none
 * @param limit the limit, with its unit; null when there is none
 * @param advice what to do
 * @param about the quantity it is about, as the computation names it; null when that goes without saying
 */
public record Problem(
        String code,
        String sentence,
        @Nullable String measured,
        @Nullable String limit,
        String advice,
        @Nullable String about) {}
