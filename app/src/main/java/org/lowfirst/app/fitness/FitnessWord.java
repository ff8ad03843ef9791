package org.lowfirst.app.fitness;

/** What the gate says of a bottle in one word. The words for people are in the message file, by this code. */
public enum FitnessWord {
    FIT,
    /** It may be filled; something is to be known. */
    FIT_WITH_NOTE,
    /** Some of what the rules refuse was taken on by a second person, for one fill. */
    SET_ASIDE,
    /** Nothing is against it so far; the questions of the day are open. */
    TO_LOOK_AT,
    /** Nobody has entered its marking, so nobody can tell. */
    NOT_ENTERED,
    UNFIT,
    /** What it holds may be used up; no fill, not even a part. */
    USE_UP,
    /** It is not filled any more. */
    LIFE_OVER;

    /** Whether a fill may begin. */
    public boolean mayBeFilled() {
        return this == FIT || this == FIT_WITH_NOTE || this == SET_ASIDE;
    }

    /** Whether it is refused, whatever the open questions bring. */
    public boolean refused() {
        return this == NOT_ENTERED || this == UNFIT || this == USE_UP || this == LIFE_OVER;
    }
}
