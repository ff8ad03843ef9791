package org.lowfirst.app.honest;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.journal.Head;
import org.lowfirst.planning.contents.BenchHistory;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.GaugeUse;

/**
 * What the readings of a bench come to.
 *
 * @param head the journal it was worked out from
 * @param cylinders every cylinder that was read, supplies first
 * @param gauges gauges in use, then those taken for granted, then those no longer in use
 * @param refused readings that could not be used
 * @param leftOut how many of the oldest entries were not gone through
 * @param notes what was taken for granted, in sentences
 * @param numbers all estimates and verdicts as they went; cylinders and gauges under keys
 */
public record ReadingHistory(
        Head head,
        List<CylinderNow> cylinders,
        List<GaugeNow> gauges,
        List<RefusedReading> refused,
        long leftOut,
        List<String> notes,
        BenchHistory numbers) {

    public ReadingHistory {
        cylinders = List.copyOf(cylinders);
        gauges = List.copyOf(gauges);
        refused = List.copyOf(refused);
        notes = List.copyOf(notes);
    }

    public Optional<CylinderNow> find(CylinderId id) {
        return cylinders.stream().filter(cylinder -> cylinder.id().equals(id)).findFirst();
    }

    /** The gauge usually read there. */
    public Optional<GaugeNow> findGauge(GaugeUse use) {
        return gauges.stream()
                .filter(gauge -> gauge.use() == use && (gauge.inUse() || gauge.assumed()))
                .findFirst();
    }
}
