package org.lowfirst.app.file;

import java.util.Comparator;

/**
 * A stretch of one line of a text.
 *
 * @param line line number, from 1
 * @param column first character of the stretch, from 1, counted in code points
 * @param width length of the stretch in code points, at least 1
 */
public record Place(int line, int column, int width) implements Comparable<Place> {

    private static final Comparator<Place> READING_ORDER =
            Comparator.comparingInt(Place::line).thenComparingInt(Place::column).thenComparingInt(Place::width);

    /** The first character of a text. */
    public static final Place START = new Place(1, 1, 1);

    public Place {
        if (line < 1 || column < 1 || width < 1) {
            throw new IllegalArgumentException("The place (" + line + ":" + column + ", width " + width
                    + ") must have line, column and width of at least 1.");
        }
    }

    @Override
    public int compareTo(Place other) {
        return READING_ORDER.compare(this, other);
    }
}
