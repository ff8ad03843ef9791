package org.lowfirst.planning;

/** Why the valve is shut below the target that was asked for. */
public enum Cap {
    /** It is not: the stop is the target. */
    NONE,
    /** The target is above the marked service pressure. */
    SERVICE_PRESSURE,
    /** The bench is colder than the reference temperature: warmed up to it, the target would exceed the service pressure. */
    COLD_BENCH
}
