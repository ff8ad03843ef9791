package org.lowfirst.app.paper;

import java.util.List;
import org.lowfirst.station.Units;

/**
 * A log to fill by hand when there is no power or no link, and to enter afterwards.
 *
 * @param supplies names for the columns, rank 1 first; when empty the columns are numbered
 */
public record BlankLog(Heading heading, Units units, List<String> supplies) implements Paper {

    public BlankLog {
        supplies = List.copyOf(supplies);
    }
}
