package org.lowfirst.app.flight;

import java.util.List;

/**
 * Nothing was worked out.
 *
 * @param files what is wrong, file by file; at least one error
 */
public record RefusedFlight(List<FileProblems> files) implements FlightResult {

    public RefusedFlight {
        files = List.copyOf(files);
    }
}
