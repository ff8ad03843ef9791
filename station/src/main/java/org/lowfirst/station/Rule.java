package org.lowfirst.station;

/** The rules a command can break. The code is written for programs; the words for people are in the message file. */
public enum Rule {
    BENCH_NOT_OPEN,
    BENCH_ALREADY_OPEN,
    NAME_EMPTY,
    NAME_TAKEN,
    REASON_EMPTY,
    /** Nobody is named who says so. */
    SOURCE_EMPTY,
    PERSON_UNKNOWN,
    /** Somebody must be left to choose from. */
    LAST_PERSON,
    EQUIPMENT_UNKNOWN,
    /** What was done cannot lie ahead. */
    DAY_TO_COME,
    GROUP_UNKNOWN,
    PRIORITY_BELOW_ONE,
    FLOOR_BELOW_ZERO,
    FLOOR_ABOVE_WISH,
    /** The bottle can never hold what its group wishes. */
    WISH_ABOVE_SERVICE_PRESSURE(true),
    /** Only bottles of one group are swapped. */
    NOT_IN_ONE_GROUP,
    /** Whoever entered it cannot sign it. */
    SIGNER_IS_AUTHOR,
    ALREADY_SIGNED,
    /** Under supervision, without the role, or with a training or check-out that is past. */
    FILLS_NOT_ALONE,
    /** Not on the list, the filler, or one who needs a second person as well. */
    CANNOT_STAND_BESIDE,
    /** Only for those who answer for the bench. */
    NOT_RESPONSIBLE,
    ID_TAKEN,
    SUPPLY_UNKNOWN,
    SUPPLY_NOT_CONNECTED,
    SUPPLY_NAMED_TWICE,
    BOTTLE_UNKNOWN,
    BOTTLE_RETIRED,
    FILL_UNKNOWN,
    FILL_ALREADY_OPEN,
    /** Somebody else has entered this stage meanwhile. */
    STAGE_ALREADY_RECORDED,
    /** Fills that are not part of it wait until it has ended. */
    SESSION_UNDER_WAY,
    SESSION_UNKNOWN,
    BOTTLE_NOT_IN_SESSION,
    BOTTLE_NAMED_TWICE,
    STAGE_NOT_PLANNED,
    WATER_VOLUME_NOT_ABOVE_ZERO,
    /** Outside what cylinders usually have; most often the unit is wrong. */
    WATER_VOLUME_UNUSUAL(true),
    SERVICE_PRESSURE_NOT_ABOVE_ZERO,
    /** Outside what cylinders are usually marked with; most often the unit is wrong. */
    SERVICE_PRESSURE_UNUSUAL(true),
    /** Above what any cylinder is made for and the gas is computed for. */
    SERVICE_PRESSURE_IMPOSSIBLE,
    HOSE_VOLUME_UNUSUAL(true),
    FULL_SUPPLY_NOT_ABOVE_ZERO,
    AMBIENT_OUT_OF_RANGE,
    USUAL_TARGET_ABOVE_SERVICE_PRESSURE,
    TARGET_NOT_ABOVE_ZERO,
    TARGET_ABOVE_SERVICE_PRESSURE,
    TARGET_NOT_ABOVE_READING,
    READING_BELOW_ZERO,
    /** Higher than the cylinder's test pressure: no gauge on it can have shown that; most often the unit is wrong. */
    READING_ABOVE_TEST_PRESSURE,
    /** Fits the reading before almost exactly if it is taken in another unit. */
    READING_LOOKS_LIKE_OTHER_UNIT(true),
    /** A number in kPa that is next to nothing, and usual in bar. */
    READING_LOOKS_LIKE_BAR(true),
    /** A stage only ever raises the bottle, unless gas ran back. */
    BOTTLE_FELL(true),
    /** A gauge cannot show more than its scale holds. */
    READING_ABOVE_FULL_SCALE,
    /** A local number of the emergency card lacks its name or its digits. */
    LOCAL_NUMBER_INCOMPLETE,
    GAUGE_UNKNOWN,
    GAUGE_SCALE_NOT_ABOVE_ZERO,
    GAUGE_DIVISION_OUT_OF_RANGE,
    /** Either a class or a stated error, not both and not neither. */
    GAUGE_ACCURACY_NEEDED,
    GAUGE_CLASS_OUT_OF_RANGE,
    GAUGE_ERROR_OUT_OF_RANGE,
    /** No stop above the marked pressure without a published rule or table. */
    WARM_STOP_NEEDS_A_RULE,
    /** A rule book must read back as one. */
    RULE_BOOK_MALFORMED,
    /** No such currency is paid in. */
    CURRENCY_UNKNOWN,
    /** The accounts of a bench are kept in one currency. */
    CURRENCY_OTHER,
    PRICE_BELOW_ZERO,
    GUEST_PERCENT_OUT_OF_RANGE,
    /** Above zero, and no finer than the currency can be paid. */
    ROUNDING_STEP_NOT_PAYABLE,
    QUANTITY_DECIMALS_OUT_OF_RANGE,
    /** A day nobody can mean: too long ago, or not here yet. */
    DAY_OUT_OF_RANGE,
    /** A number to look ahead with that cannot be meant. */
    FIGURE_OUT_OF_RANGE,
    NO_FIGURES,
    HAPPENING_UNKNOWN,
    /** A closed month stays as it is. */
    DAY_IN_CLOSED_MONTH,
    DAYS_BACKWARDS,
    DAY_COUNT_OUT_OF_RANGE,
    SERIAL_EMPTY,
    AMOUNT_ZERO,
    /** What the supplier gave back. */
    AMOUNT_BELOW_ZERO(true),
    AMOUNT_TOO_FINE,
    MONTH_NOT_OVER,
    MONTH_ALREADY_CLOSED,
    /** Lines of an earlier month are open. */
    EARLIER_MONTH_OPEN,
    /** A month is never opened again. */
    MONTH_STAYS_CLOSED,
    /** Only for those who keep the charges. */
    NOT_TREASURER,
    TEST_PRESSURE_NOT_ABOVE_ZERO,
    TESTED_BEFORE_MADE,
    FILLS_BELOW_ZERO,
    ANSWERS_MISSING,
    NOTHING_TO_SET_ASIDE,
    /** Who fills cannot set a refusal aside alone. */
    SECOND_PERSON_NEEDED,
    /** Some refusals stand whoever asks. */
    NEVER_SET_ASIDE,
    /** The gate refuses the bottle today; why is in its judgement. */
    BOTTLE_UNFIT,
    TEMPERATURE_OUT_OF_RANGE,
    TIME_IN_FUTURE,
    TIME_BEFORE_START,
    ENTRY_UNKNOWN,
    ENTRY_ALREADY_CORRECTED,
    ENTRY_NOT_CORRECTABLE,
    REPLACEMENT_OF_OTHER_KIND,
    /** A later entry needs what this one would take away. */
    LATER_ENTRY_NEEDS_IT;

    private final boolean confirmable;

    Rule() {
        this(false);
    }

    Rule(boolean confirmable) {
        this.confirmable = confirmable;
    }

    /** Whether a person may insist: the value is unlikely, not impossible. */
    public boolean confirmable() {
        return confirmable;
    }
}
