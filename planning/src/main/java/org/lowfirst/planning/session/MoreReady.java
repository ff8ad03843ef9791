package org.lowfirst.planning.session;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * What would make more bottles ready when not all can be.
 *
 * @param commonFloor the highest reading with which every bottle counts as ready and the bank can make all ready; null when none
 *     above the highest bottle's present reading does
 * @param exchanges what a full supply in the place of each would do, best first; empty when it is unknown what a full one reads
 */
public record MoreReady(@Nullable GaugePressure commonFloor, List<Exchange> exchanges) {

    public MoreReady {
        exchanges = List.copyOf(exchanges);
    }

    /**
     * @param supply the supply that leaves
     * @param ready bottles a plan was found to make ready then
     */
    public record Exchange(String supply, int ready) {}
}
