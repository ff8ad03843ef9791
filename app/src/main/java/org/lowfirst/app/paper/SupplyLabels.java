package org.lowfirst.app.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Standing;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;

/**
 * Labels for the supplies of a bank, several to a sheet.
 *
 * @param labels rank 1 first
 */
public record SupplyLabels(Heading heading, List<Label> labels) implements Paper {

    public SupplyLabels {
        labels = List.copyOf(labels);
    }

    /**
     * @param rank place in its bank, 1 = lowest pressure
     * @param of how many supplies stand in its bank
     * @param bank name of its bank; empty for the one without a name
     * @param standing when it is opened
     * @param name how people at the bench call it
     * @param serial the stamped serial number, null when nobody read it
     * @param servicePressure as marked
     */
    public record Label(
            int rank,
            int of,
            String bank,
            Standing standing,
            String name,
            @Nullable String serial,
            StatedVolume waterVolume,
            StatedPressure servicePressure) {}
}
