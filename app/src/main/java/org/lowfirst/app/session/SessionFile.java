package org.lowfirst.app.session;

import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.plan.FileBank;
import org.lowfirst.planning.session.SessionRequest;

/**
 * A session file that can be planned.
 *
 * @param bank the bank, its conditions and units
 * @param request what it asks
 * @param places where each bottle stands in the file, by its name
 */
record SessionFile(FileBank bank, SessionRequest request, Map<String, BottlePlaces> places) {

    /**
     * @param reading where the reading stands
     * @param floor where the floor stands; the reading when there is none
     */
    record BottlePlaces(Place reading, Place floor) {}

    SessionFile {
        places = Map.copyOf(places);
    }

    Optional<BottlePlaces> findPlaces(String bottle) {
        return Optional.ofNullable(places.get(bottle));
    }
}
