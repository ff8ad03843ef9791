package org.lowfirst.web.fill;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;

/**
 * What the gauges showed at the end of a stage, as typed.
 *
 * @param form what was typed and what is wrong with it
 * @param bottle bottle gauge; null when it could not be read
 * @param supply supply gauge; null when nobody read it
 */
record Entered(
        Form form,
        @Nullable StatedPressure bottle,
        @Nullable StatedPressure supply) {

    /**
     * @param of bottle of the fill
     * @param from supply of the stage; null when the bottle alone is read
     */
    static Entered read(Map<String, String> typed, BenchNow now, @Nullable BottleId of, @Nullable SupplyId from) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure bottle = reader.pressure("bottle");
        @Nullable StatedPressure supply = reader.pressureIfTyped("supply");
        if (of != null && bottle != null) {
            now.offScale(of, bottle).ifPresent(sentence -> reader.fault("bottle", sentence));
        }
        if (from != null && supply != null) {
            now.offScale(from, supply).ifPresent(sentence -> reader.fault("supply", sentence));
        }
        return new Entered(reader.form(), bottle, supply);
    }

    @Nullable
    Reading supplyReading(BenchNow now) {
        return supply == null ? null : now.reading(supply, null);
    }
}
