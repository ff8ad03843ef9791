package org.lowfirst.app.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.due.DueItem;

/** Tags for bottles, several to a sheet, each with a square code that opens the bottle's page. */
public record BottleTags(Heading heading, List<Tag> tags) implements Paper {

    public BottleTags {
        tags = List.copyOf(tags);
    }

    /**
     * @param owner whose it is; empty when nobody said
     * @param servicePressure as marked
     * @param usualTarget what it is usually filled to, settled; null when nobody said
     * @param due its next test or the end of its life, whichever comes first; null when not known
     * @param address the whole address of its page
     */
    public record Tag(
            String name,
            String owner,
            StatedVolume waterVolume,
            StatedPressure servicePressure,
            @Nullable StatedPressure usualTarget,
            @Nullable DueItem due,
            String address) {}
}
