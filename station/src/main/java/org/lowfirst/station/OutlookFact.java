package org.lowfirst.station;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/** What the bench looks ahead with: figures kept, happenings planned, supplies ordered. */
public sealed interface OutlookFact extends AreaFact {

    /** Figures as they are from now on; those not named stay as they are. */
    record FiguresKept(Map<AheadFigure, BigDecimal> figures) implements OutlookFact {
        public FiguresKept {
            figures = new TreeMap<>(figures);
        }
    }

    /** Something is planned; another of the same name and first day is replaced. */
    record HappeningPlanned(Happening happening) implements OutlookFact {}

    /** Something planned does not take place. */
    record HappeningDropped(String name, LocalDate from) implements OutlookFact {}

    /** Supplies were ordered, so nobody need be told to; it ends when one is connected, or after the day expected. */
    record SuppliesOrdered(LocalDate expected) implements OutlookFact {}
}
