package org.lowfirst.station.rules;

/** Answer to a question about the cylinder. */
public enum Answer {
    YES,
    NO,
    NOT_SURE
}
