package org.lowfirst.app.plan;

/** Characters the staircase is drawn with. */
public enum Glyphs {
    /** Block characters, for a terminal that shows them. */
    BLOCKS('\u2588', '\u2593', '\u2591', '\u2502'),
    /** Characters every terminal has. */
    ASCII('#', '+', '.', '|');

    private final char held;
    private final char gained;
    private final char given;
    private final char mark;

    Glyphs(char held, char gained, char given, char mark) {
        this.held = held;
        this.gained = gained;
        this.given = given;
        this.mark = mark;
    }

    /** Gas that was there before and stays. */
    char held() {
        return held;
    }

    /** What the bottle gains. */
    char gained() {
        return gained;
    }

    /** What the supply gives. */
    char given() {
        return given;
    }

    /** A line across the picture. */
    char mark() {
        return mark;
    }
}
