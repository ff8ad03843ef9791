package org.lowfirst.app.honest;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.station.Bench;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Reading;

/** How far a reading may be off by the class or the stated error of its gauge. */
public final class ReadingTolerance {

    private ReadingTolerance() {}

    /** The largest error; of a gauge nobody described, that of one taken for granted. */
    public static GaugePressure of(Bench bench, CylinderId cylinder, Reading reading) {
        Gauge gauge = bench.findGauge(cylinder, reading)
                .map(details -> GaugeShelf.gauge(details.name(), details))
                .orElseGet(() -> JournalAssumptions.STANDARD.gauge(
                        "",
                        bench.settings().units().pressure(),
                        reading.pressure().gauge()));
        return gauge.limit();
    }
}
