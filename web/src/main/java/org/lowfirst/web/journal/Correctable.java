package org.lowfirst.web.journal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;

/** The gauge readings in a fact that can be given anew, and the fact with other ones in their place. */
final class Correctable {

    static final String READING = "reading";
    static final String BEFORE = "before";
    static final String AFTER = "after";
    static final String SUPPLY_AFTER = "supply";

    static final String FIRST = "first";
    static final String SECOND = "second";

    private Correctable() {}

    /** The readings that can be given anew, in the order to show them; empty when there are none. */
    static Map<String, StatedPressure> of(Fact fact) {
        Map<String, StatedPressure> readings = new LinkedHashMap<>();
        if (fact instanceof Fact.ReadingTaken taken) {
            readings.put(READING, taken.reading().pressure());
        } else if (fact instanceof Fact.WarmBottleRead warm) {
            readings.put(READING, warm.reading().pressure());
        } else if (fact instanceof Fact.SupplyConnected connected) {
            readings.put(READING, connected.reading().pressure());
        } else if (fact instanceof Fact.FillStarted started) {
            readings.put(BEFORE, started.before().pressure());
        } else if (fact instanceof Fact.StageRecorded recorded) {
            readings.put(AFTER, recorded.stage().bottleAfter().pressure());
            @Nullable Reading supply = recorded.stage().supplyAfter();
            if (supply != null) {
                readings.put(SUPPLY_AFTER, supply.pressure());
            }
        } else if (fact instanceof Fact.FillFinished finished) {
            readings.put(AFTER, finished.after().pressure());
        } else if (fact instanceof Fact.FillRecorded recorded) {
            readings.put(BEFORE, recorded.before().pressure());
            readings.put(AFTER, recorded.after().pressure());
        } else if (fact instanceof Fact.TwoOpenedTogether together) {
            put(readings, FIRST, together.firstAfter());
            put(readings, SECOND, together.secondAfter());
        } else if (fact instanceof Fact.EntryCorrected corrected && corrected.replacement() != null) {
            return of(corrected.replacement());
        }
        return readings;
    }

    /**
     * The same fact with other readings.
     *
     * @param anew pressures by the names of {@link #of}; what is missing stays
     * @throws IllegalArgumentException for a fact without readings
     */
    static Fact with(Fact fact, Map<String, StatedPressure> anew) {
        if (fact instanceof Fact.ReadingTaken taken) {
            return new Fact.ReadingTaken(taken.cylinder(), changed(taken.reading(), anew.get(READING)));
        }
        if (fact instanceof Fact.WarmBottleRead warm) {
            return new Fact.WarmBottleRead(warm.bottle(), changed(warm.reading(), anew.get(READING)), warm.gas());
        }
        if (fact instanceof Fact.SupplyConnected connected) {
            return new Fact.SupplyConnected(
                    connected.supply(), connected.details(), changed(connected.reading(), anew.get(READING)));
        }
        if (fact instanceof Fact.FillStarted started) {
            return new Fact.FillStarted(
                    started.fill(), started.bottle(), started.target(), changed(started.before(), anew.get(BEFORE)));
        }
        if (fact instanceof Fact.StageRecorded recorded) {
            return new Fact.StageRecorded(recorded.fill(), changed(recorded.stage(), anew));
        }
        if (fact instanceof Fact.FillFinished finished) {
            return new Fact.FillFinished(finished.fill(), changed(finished.after(), anew.get(AFTER)));
        }
        if (fact instanceof Fact.FillRecorded recorded) {
            return new Fact.FillRecorded(
                    recorded.fill(),
                    recorded.bottle(),
                    recorded.target(),
                    changed(recorded.before(), anew.get(BEFORE)),
                    changed(recorded.after(), anew.get(AFTER)),
                    List.copyOf(recorded.stages()));
        }
        if (fact instanceof Fact.TwoOpenedTogether together) {
            return new Fact.TwoOpenedTogether(
                    together.first(),
                    together.second(),
                    changedIfRead(together.firstAfter(), anew.get(FIRST)),
                    changedIfRead(together.secondAfter(), anew.get(SECOND)));
        }
        if (fact instanceof Fact.EntryCorrected corrected && corrected.replacement() != null) {
            return with(corrected.replacement(), anew);
        }
        throw new IllegalArgumentException("The fact (" + fact.getClass().getSimpleName() + ") must hold a reading.");
    }

    private static void put(Map<String, StatedPressure> readings, String field, @Nullable Reading reading) {
        if (reading != null) {
            readings.put(field, reading.pressure());
        }
    }

    private static @Nullable Reading changedIfRead(@Nullable Reading reading, @Nullable StatedPressure pressure) {
        return reading == null ? null : changed(reading, pressure);
    }

    private static Stage changed(Stage stage, Map<String, StatedPressure> anew) {
        @Nullable Reading supply = stage.supplyAfter();
        return new Stage(
                stage.supply(),
                changed(stage.bottleAfter(), anew.get(AFTER)),
                stage.supplyBefore(),
                supply == null ? null : changed(supply, anew.get(SUPPLY_AFTER)));
    }

    private static Reading changed(Reading reading, @Nullable StatedPressure pressure) {
        return pressure == null
                ? reading
                : new Reading(
                        pressure, reading.at(), reading.temperature(), reading.temperatureAssumed(), reading.gauge());
    }
}
