package org.lowfirst.station.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** What a finding measured, or the limit it was held against. */
public sealed interface Measure {

    /** Nothing was measured. */
    Measure NOTHING = new Nothing();

    record Nothing() implements Measure {}

    record OfDate(LocalDate date) implements Measure {}

    record OfDays(long days) implements Measure {}

    record OfFills(int fills) implements Measure {}

    record OfVolume(Volume volume) implements Measure {}

    /**
     * @param at temperature it is stated at, null for a reading as it is now
     */
    record OfPressure(GaugePressure pressure, @Nullable Temperature at) implements Measure {}

    /** A mark, a name or an answer, as entered. */
    record OfWord(String word) implements Measure {}
}
