package org.lowfirst.web.papers;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;
import java.util.function.Function;
import org.lowfirst.station.BottleId;
import org.lowfirst.web.view.Place;

/**
 * Where the pages of bottles are found from another machine.
 *
 * @param base what stands before the path, e.g. "http://bench.example:8080", without a stroke at its end
 */
record BottleAddresses(String base) {

    private static final int LONGEST = 200;

    /** Reads an address somebody typed; nothing when it is none that a telephone can open. */
    static Optional<BottleAddresses> read(String typed) {
        String text = typed.strip().replaceAll("/+$", "");
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            URI uri = new URI(text);
            boolean web = "http".equalsIgnoreCase(uri.getScheme()) || "https".equalsIgnoreCase(uri.getScheme());
            boolean plain = uri.getHost() != null && uri.getRawQuery() == null && uri.getRawFragment() == null;
            return web && plain ? Optional.of(new BottleAddresses(text)) : Optional.empty();
        } catch (URISyntaxException unreadable) {
            return Optional.empty();
        }
    }

    Function<BottleId, String> at(Place place) {
        return bottle -> base + place.path("/bottles/" + bottle);
    }
}
