package org.lowfirst.planning;

/** Why a supply is not opened in a fill. */
public enum SkipReason {
    /** The bottle is already at or above it when its turn comes. */
    NOT_ABOVE_BOTTLE("not above the bottle"),
    /** It is a little above the bottle, but filling the hose would bring it down to the bottle. */
    NOTHING_LEFT_AFTER_HOSE("nothing to give after filling the hose"),
    /** The bottle is at its stop before its turn comes. */
    NOT_NEEDED("not needed"),
    /** The bench holds it back. */
    HELD_BACK("held back");

    private final String words;

    SkipReason(String words) {
        this.words = words;
    }

    static SkipReason of(Visit visit) {
        return switch (visit) {
            case NOT_ABOVE_BOTTLE -> NOT_ABOVE_BOTTLE;
            case NOTHING_LEFT_AFTER_HOSE -> NOTHING_LEFT_AFTER_HOSE;
            case NOT_NEEDED -> NOT_NEEDED;
            case HELD_BACK -> HELD_BACK;
            case EQUAL, TARGET -> throw new IllegalArgumentException("The visit (" + visit + ") must be a skip.");
        };
    }

    /** The reason in plain words. */
    public String words() {
        return words;
    }
}
