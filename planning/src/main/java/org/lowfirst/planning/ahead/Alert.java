package org.lowfirst.planning.ahead;

/** Whether somebody must be told to order. */
public enum Alert {
    /** There is time. */
    NONE,
    /** The order date is near. */
    SOON,
    /** It is today. */
    NOW,
    /** It has passed: the reserve may be touched before a delivery comes. */
    LATE
}
