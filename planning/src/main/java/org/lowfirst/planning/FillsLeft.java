package org.lowfirst.planning;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * How many such fills a bank has in it: the same bottle, found at the same reading, filled to the same stop.
 *
 * @param complete fills that come to the stop
 * @param nextStopsAt what the fill after them would read at the end; null when counting ended at {@link #MOST} or when the
 *     bottle needs no gas
 */
public record FillsLeft(int complete, @Nullable GaugePressure nextStopsAt) {

    /** Counting ends here. */
    public static final int MOST = 9_999;

    /** For a bottle that needs no gas. */
    static final FillsLeft NOT_COUNTED = new FillsLeft(0, null);

    /** For example "7, and an 8th to about 147 bar". */
    public String inWords(ShownUnits units) {
        return FillsLeftWords.of(this, units);
    }
}
