package org.lowfirst.app.bench;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.SupplyId;

/**
 * Where a client stands in a guided fill; carried by the client, never in the journal.
 *
 * @param stage number of the stage, from 1
 * @param supply the supply this stage is on; null before and after the stages
 */
public record Position(int stage, Phase phase, @Nullable SupplyId supply) {

    /** As text for a form field, e.g. "2.WATCH.s-17"; read back by {@link #parse}. */
    public String toText() {
        return stage + "." + phase + (supply == null ? "" : "." + supply);
    }

    /** @throws IllegalArgumentException when the text was not made by {@link #toText} */
    public static Position parse(String text) {
        String[] parts = text.split("\\.", 3);
        if (parts.length < 2 || !parts[0].matches("[0-9]{1,3}")) {
            throw new IllegalArgumentException("The position (" + text + ") must look like 2.WATCH.s-17.");
        }
        return new Position(
                Integer.parseInt(parts[0]), Phase.valueOf(parts[1]), parts.length == 3 ? new SupplyId(parts[2]) : null);
    }
}
