package org.lowfirst.app.money;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.FillId;

/**
 * A fill for which no line stands.
 *
 * @param day day of the fill; null while it is under way
 * @param bottle name of the bottle
 * @param entry number of the entry after which it stood like this
 */
public record Uncharged(FillId fill, @Nullable LocalDate day, String bottle, Why why, long entry) {

    /** Why no line stands. */
    public enum Why {
        UNDER_WAY,
        /** It was before the first tariff. */
        NO_TARIFF,
        /** Its tariff is in another currency than the accounts. */
        OTHER_CURRENCY,
        /** Nobody owns the bottle, and it was billed to nobody. */
        NOBODY_PAYS,
        /** The bottle held no more afterwards than before. */
        NOTHING_WENT_IN,
        /** No gas can have given what the gauges showed. */
        NOT_COUNTED,
        /** It was taken back. */
        TAKEN_BACK
    }
}
