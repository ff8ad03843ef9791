package org.lowfirst.app.journal;

import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;

/**
 * Something to append.
 *
 * @param place number of the entry whose place it takes when it corrects one; 0 otherwise
 */
public record NewEntry(Origin origin, Fact fact, long place) {

    public static NewEntry of(Origin origin, Fact fact) {
        return new NewEntry(origin, fact, 0);
    }
}
