package org.lowfirst.cli;

/** What the process answers with. Scripts rely on these numbers. */
final class ExitCode {

    /** Done; for a plan: every bottle reaches its target. */
    static final int DONE = 0;

    /** Something went wrong that is not the input's fault. */
    static final int FAILED = 1;

    /** The file or the command line is wrong; nothing was done. */
    static final int BAD_INPUT = 2;

    /** The plan is printed, and a bottle in it does not reach its target. */
    static final int TARGET_NOT_REACHED = 3;

    /** The flight is worked out, and the bottles do not cover it. */
    static final int NOT_COVERED = 3;

    /** The session is planned, and a bottle does not end ready. */
    static final int NOT_ALL_READY = 3;

    /** The study was ended before its last run. */
    static final int ENDED_EARLY = 3;

    /** The bank lasts, and an order is due today or late. */
    static final int ORDER_IS_DUE = 3;

    /** Not even the largest bank is enough for the camp. */
    static final int NOT_ENOUGH = 3;

    private ExitCode() {}
}
