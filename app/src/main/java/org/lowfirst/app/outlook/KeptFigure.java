package org.lowfirst.app.outlook;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A figure the bench looks ahead with.
 *
 * @param value as it was stated
 * @param day when it was kept, paid or agreed
 * @param source where it comes from
 */
public record KeptFigure(BigDecimal value, LocalDate day, Source source) {

    /** Where a figure comes from. */
    public enum Source {
        /** Somebody kept it. */
        KEPT,
        /** It was paid last, see the costs of the bench. */
        PAID,
        /** It was agreed with the supplier, see the rent of the bench. */
        AGREED
    }
}
