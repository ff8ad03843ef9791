package org.lowfirst.app.flight;

import java.util.List;

/**
 * The altitude of a flight as it was recorded.
 *
 * @param fixes at least two, each later than the one before
 * @param notes what a person should know about how they were read
 */
record Track(List<Fix> fixes, List<String> notes) {

    Track {
        fixes = List.copyOf(fixes);
        notes = List.copyOf(notes);
    }
}
