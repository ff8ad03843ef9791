package org.lowfirst.station;

import java.math.BigDecimal;
import java.util.Locale;

/** A number that the bench looks ahead with, kept once instead of typed each time. Limits: common practice, no source. */
public enum AheadFigure {
    /** Days from the order to the delivery. */
    LEAD_DAYS("0", "365", true),
    /** Fills that should still be in the bank when the delivery comes. */
    RESERVE_FILLS("0", "1000", true),
    /** What people think a year brings; 0 when nobody has a notion. */
    FILLS_PER_YEAR("0", "100000", false),
    /** Price of a full supply, in the currency of the accounts. */
    CONTENT_PRICE("0", "1000000000", false),
    /** Price of a delivery. */
    DELIVERY_PRICE("0", "1000000000", false),
    /** What it costs when a bottle cannot be finished. */
    MISSED_FILL_PRICE("0", "1000000000", false),
    /** Price of the line to one more supply. */
    INTERCONNECT_PRICE("0", "1000000000", false),
    /** Rent of a supply for a day. */
    RENT_PER_DAY("0", "1000000000", false),
    /** Fills of one pilot of a camp on a day that is flown. */
    FILLS_PER_PILOT("0.01", "10", false),
    /** Chance that a day of a camp is flown [%]. */
    FLYABLE_PERCENT("1", "100", false),
    /** Chance wanted that every bottle of a camp can be finished [%]. */
    CHANCE_PERCENT("1", "99.9", false);

    private final BigDecimal lowest;
    private final BigDecimal highest;
    private final boolean whole;

    AheadFigure(String lowest, String highest, boolean whole) {
        this.lowest = new BigDecimal(lowest);
        this.highest = new BigDecimal(highest);
        this.whole = whole;
    }

    public BigDecimal lowest() {
        return lowest;
    }

    public BigDecimal highest() {
        return highest;
    }

    /** Whether it is a count. */
    public boolean whole() {
        return whole;
    }

    /** Its name where it is written. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    boolean takes(BigDecimal value) {
        return value.compareTo(lowest) >= 0
                && value.compareTo(highest) <= 0
                && (!whole || value.stripTrailingZeros().scale() <= 0);
    }
}
