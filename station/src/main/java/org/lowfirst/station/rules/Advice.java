package org.lowfirst.station.rules;

/** What to do about a finding. The words for people are in the message file, by this code. */
public enum Advice {
    NOTHING_TO_DO(Consequence.HOLD),
    RETEST_SOON(Consequence.HOLD),
    USE_UP_THEN_RETEST(Consequence.USE_UP),
    RETEST_BEFORE_FILLING(Consequence.HOLD),
    ENTER_LAST_TEST(Consequence.HOLD),
    /** The date typed lies in the future. */
    CHECK_TEST_DATE(Consequence.HOLD),
    LIFE_ENDS_SOON(Consequence.HOLD),
    RETIRE_LIFE_OVER(Consequence.RETIRE),
    ENTER_MONTH_MADE(Consequence.HOLD),
    FEW_FILLS_LEFT(Consequence.HOLD),
    RETIRE_FILLS_USED_UP(Consequence.RETIRE),
    ENTER_FILLS_SO_FAR(Consequence.HOLD),
    CAP_TARGET(Consequence.LOWER_TARGET),
    /** The contents wanted were not stated at the temperature the rule speaks of. */
    STATE_CONTENTS_AT_TEMPERATURE(Consequence.LOWER_TARGET),
    ENTER_SERVICE_PRESSURE(Consequence.HOLD),
    ENTER_TEST_PRESSURE(Consequence.HOLD),
    /** Service pressure taken from a rule because none is marked. */
    CHECK_ASSUMED_SERVICE_PRESSURE(Consequence.HOLD),
    PLUS_NOT_FOR_THIS_SPECIFICATION(Consequence.HOLD),
    PLUS_NOT_MARKED(Consequence.HOLD),
    HAMMER_TEST_FIRST(Consequence.HOLD),
    /** A star is marked but its conditions are not met or not known; the shorter interval holds. */
    STAR_DOES_NOT_COUNT(Consequence.HOLD),
    ENTER_PERMIT_TERMS(Consequence.HOLD),
    ADD_RULE_FOR_SPECIFICATION(Consequence.HOLD),
    READ_MARKINGS_AGAIN(Consequence.HOLD),
    INSPECT_AND_CLEAN_FIRST(Consequence.HOLD),
    INSPECTED_SINCE_EMPTY(Consequence.HOLD),
    TAKE_READING(Consequence.HOLD),
    DO_NOT_FILL_OTHER_GAS(Consequence.HOLD),
    ENTER_GAS(Consequence.HOLD),
    DO_NOT_ADAPT_CONNECTION(Consequence.HOLD),
    ENTER_CONNECTION(Consequence.HOLD),
    CLEAN_FOR_OXYGEN(Consequence.HOLD),
    ASK_ABOUT_OTHER_SERVICE(Consequence.HOLD),
    SHOW_CLEANING_RECORD(Consequence.HOLD),
    ANSWER_QUESTION(Consequence.HOLD),
    SEND_TO_INSPECTION(Consequence.HOLD),
    LET_SECOND_PERSON_LOOK(Consequence.HOLD),
    ASK_OWNER(Consequence.HOLD),
    ASK_FOR_EDDY_CURRENT_TEST(Consequence.HOLD),
    USE_IN_AIRCRAFT_ONLY(Consequence.HOLD);

    private final Consequence consequence;

    Advice(Consequence consequence) {
        this.consequence = consequence;
    }

    /** What it means for the cylinder when it comes with a refusal. */
    public Consequence consequence() {
        return consequence;
    }
}
