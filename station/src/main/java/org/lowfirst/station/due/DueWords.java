package org.lowfirst.station.due;

/** Words for people, in their language. */
public interface DueWords {

    /** One line, e.g. "Test of B-21 due". */
    String summary(DueItem item);

    /** More, may have several lines; empty for none. */
    String description(DueItem item);
}
