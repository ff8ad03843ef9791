package org.lowfirst.app.gas;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What somebody asks about a reading, as typed.
 *
 * @param reading what the gauge shows
 * @param at temperature of the gas
 * @param readsAt temperatures to read the same gas at; none: a row of common ones
 * @param volume water volume of the cylinder; null when contents are not asked for
 * @param rated its service pressure; null when not known
 * @param rules us or eu; null counts as us
 */
public record ReadingQuestion(
        String reading,
        String at,
        List<String> readsAt,
        @Nullable String volume,
        @Nullable String rated,
        @Nullable String rules) {

    public ReadingQuestion {
        readsAt = List.copyOf(readsAt);
    }
}
