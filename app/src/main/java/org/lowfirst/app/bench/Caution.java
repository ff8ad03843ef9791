package org.lowfirst.app.bench;

/** Cautions shown where the act happens; the words are in the message file. */
public enum Caution {
    OPEN_SLOWLY,
    ONE_SUPPLY_AT_A_TIME,
    NO_OIL_OR_GREASE,
    CHECK_THE_MARKING,
    VENTILATE,
    NO_IGNITION,
    SECOND_PERSON_FOR_NEW_FILLERS,
    HEAT_OF_FILLING,
    VENT_BEFORE_DISCONNECTING,
    /** The bottle reads more than its marked service pressure. */
    ABOVE_SERVICE_PRESSURE,
    /** The bottle reads nothing: it may hold air or moisture. */
    BOTTLE_EMPTY,
    READING_UNLIKE_EXPECTED
}
