package org.lowfirst.app.flight;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Place;
import org.lowfirst.planning.flight.FlightRequest;

/**
 * A flight file that can be worked out.
 *
 * @param request what it asks
 * @param rules whose rule texts are read
 * @param units the units it uses, in which the sheet answers
 * @param places where the reading of each bottle stands, by its name
 * @param trackNotes what a person should know about its track; empty when it has legs
 */
record FlightFile(
        FlightRequest request,
        RuleChoice rules,
        FlightUnits units,
        Map<String, Place> places,
        List<String> trackNotes) {

    FlightFile {
        places = Map.copyOf(places);
        trackNotes = List.copyOf(trackNotes);
    }

    Optional<Place> findPlace(String subject) {
        return Optional.ofNullable(places.get(subject));
    }
}
