package org.lowfirst.planning.study;

/** What is summed over the counted years of one run of one alternative. */
public enum Measure {
    /** Bottles brought to their stop. */
    FILLS(0),
    /** Fills the booster worked on. */
    BOOSTED_FILLS(1),
    /** Bottles that could not be finished when they came. */
    MISSED_FILLS(2),
    /** Those of the missed fills that no bank of this size could finish, full as delivered. */
    OUT_OF_REACH(3),
    /** Bottles that were at their stop already. */
    NOT_NEEDED(4),
    /** Supplies received. */
    SUPPLIES(5),
    /** Deliveries. */
    DELIVERIES(6),
    /** Supplies sent back. */
    SENT_BACK(7),
    /** Gas sent back unused [mol]. */
    SENT_BACK_MOL(8),
    /** Readings of the supplies sent back, added up [Pa gauge]. */
    RESIDUALS_PA(9),
    /** Gas received [mol]. */
    RECEIVED_MOL(10),
    /** Gas that went into bottles [mol]. */
    TO_BOTTLES_MOL(11),
    /** Gas lost with the hose [mol]. */
    VENTED_MOL(12),
    /** Everything paid. */
    COST(13);

    /** How many there are. */
    static final int COUNT = values().length;

    private final int place;

    Measure(int place) {
        this.place = place;
    }

    /** Where it stands among the measures, from 0. */
    int place() {
        return place;
    }
}
