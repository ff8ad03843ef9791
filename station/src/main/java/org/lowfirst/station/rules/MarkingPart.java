package org.lowfirst.station.rules;

/** A part of the marking a book can ask for. */
public enum MarkingPart {
    SPECIFICATION,
    SERVICE_PRESSURE,
    TEST_PRESSURE,
    MATERIAL,
    MONTH_MADE
}
