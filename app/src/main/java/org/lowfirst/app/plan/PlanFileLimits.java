package org.lowfirst.app.plan;

/** How much a plan file may hold. Far above any bench; they only keep a wrong file from hanging the program. */
public final class PlanFileLimits {

    public static final int MOST_BYTES = 262_144;
    static final int MOST_SUPPLIES = 64;
    static final int MOST_BOTTLES = 200;

    private PlanFileLimits() {}
}
