package org.lowfirst.planning.session;

/** How a bottle ends. */
public enum Readiness {
    /** At its wish. */
    FULL,
    /** At its floor, which is enough. */
    AT_FLOOR,
    /** Not taken on in this plan; its valve stays shut. */
    NOT_READY
}
