package org.lowfirst.app.honest;

import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeOffset;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;

/**
 * A gauge with what the journal has taught about it.
 *
 * @param name what the bench calls it
 * @param use where it is usually read
 * @param details as described; null for a gauge that is taken for granted because nobody described one
 * @param inUse false once retired, or calibrated anew since
 * @param gauge scale and largest error, without what was learned
 * @param learned what it shows too much; null when nothing was learned
 * @param sentence all that in words
 */
public record GaugeNow(
        String name,
        GaugeUse use,
        @Nullable GaugeDetails details,
        boolean inUse,
        Gauge gauge,
        @Nullable GaugeOffset learned,
        String sentence) {

    /** Whether scale and class are taken for granted. */
    public boolean assumed() {
        return details == null;
    }

    /** The gauge with what was learned, to compute with. */
    public Gauge known() {
        return learned == null ? gauge : gauge.with(learned);
    }
}
