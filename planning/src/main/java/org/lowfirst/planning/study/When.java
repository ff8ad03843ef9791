package org.lowfirst.planning.study;

/** What makes a bench send for supplies. */
public enum When {
    /** A bottle is there that the bank cannot finish. */
    A_FILL_WOULD_FAIL,
    /** After a fill, the bank could not finish the most demanding bottle that may come next. */
    THE_NEXT_MIGHT_FAIL,
    /** After a fill, the lowest supply reads no more than the residual; or a bottle is there that the bank cannot finish. */
    LOWEST_AT_RESIDUAL
}
