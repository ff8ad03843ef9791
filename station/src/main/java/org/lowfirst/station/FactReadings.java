package org.lowfirst.station;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The readings a fact carries, in the order they were taken. */
final class FactReadings {

    private FactReadings() {}

    static List<Reading> of(Fact fact) {
        List<Reading> readings = new ArrayList<>();
        if (fact instanceof Fact.SupplyConnected f) {
            readings.add(f.reading());
        } else if (fact instanceof Fact.SupplyRemoved f) {
            add(readings, f.residual());
        } else if (fact instanceof Fact.BottleRegistered f) {
            add(readings, f.reading());
        } else if (fact instanceof Fact.ReadingTaken f) {
            readings.add(f.reading());
        } else if (fact instanceof Fact.WarmBottleRead f) {
            readings.add(f.reading());
        } else if (fact instanceof Fact.FillStarted f) {
            readings.add(f.before());
        } else if (fact instanceof Fact.StageRecorded f) {
            addStage(readings, f.stage());
        } else if (fact instanceof Fact.FillFinished f) {
            readings.add(f.after());
        } else if (fact instanceof Fact.FillRecorded f) {
            readings.add(f.before());
            f.stages().forEach(stage -> addStage(readings, stage));
            readings.add(f.after());
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            add(readings, f.firstAfter());
            add(readings, f.secondAfter());
        } else if (fact instanceof Fact.EntryCorrected f && f.replacement() != null) {
            readings.addAll(of(f.replacement()));
        }
        return readings;
    }

    private static void addStage(List<Reading> readings, Stage stage) {
        add(readings, stage.supplyBefore());
        add(readings, stage.supplyAfter());
        readings.add(stage.bottleAfter());
    }

    private static void add(List<Reading> readings, @Nullable Reading reading) {
        if (reading != null) {
            readings.add(reading);
        }
    }
}
