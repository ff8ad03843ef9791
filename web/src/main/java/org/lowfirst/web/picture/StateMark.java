package org.lowfirst.web.picture;

import gg.jte.Content;

/** Small marks that differ by shape as well as by colour; the word beside says the same. */
public enum StateMark {
    /** A square with a cross: act now. */
    CROSS,
    /** A diamond with a question mark: not known. */
    QUESTION,
    /** A triangle: soon, when there is time. */
    SOON,
    /** A disc: nothing to do. */
    FINE;

    public Content picture() {
        Svg svg = Svg.decorative(28, 28);
        Svg drawn = switch (this) {
            case CROSS -> svg.rounded("mark-cross", 2, 2, 24, 24, 3).path("mark-stroke", "M8 8 L20 20 M20 8 L8 20");
            case QUESTION ->
                svg.path("mark-question", "M14 1 L27 14 L14 27 L1 14 Z").text("strong", 14, 20, 17, "middle", "?");
            case SOON -> svg.path("mark-soon", "M14 2 L27 26 L1 26 Z");
            case FINE -> svg.path("mark-fine", "M14 2 A12 12 0 1 1 13.9 2 Z");
        };
        return drawn.end();
    }
}
