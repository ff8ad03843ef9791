package org.lowfirst.app.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;
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
     * @param rank 1 = lowest pressure
     * @param of how many supplies are ranked
     * @param name how people at the bench call it
     * @param serial the stamped serial number, null when nobody read it
     * @param servicePressure as marked
     */
    public record Label(
            int rank,
            int of,
            String name,
            @Nullable String serial,
            StatedVolume waterVolume,
            StatedPressure servicePressure) {}
}
