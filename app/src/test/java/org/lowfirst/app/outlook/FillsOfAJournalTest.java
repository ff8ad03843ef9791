package org.lowfirst.app.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Evolving;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Folding;
import org.lowfirst.station.Origin;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;

/** What counts as the use of a bench. */
final class FillsOfAJournalTest {

    private static final BenchId BENCH = new BenchId("larkmoor");
    private static final BottleId BOTTLE = new BottleId("m-03");

    private final List<Entry> entries = new ArrayList<>();

    @BeforeEach
    void openTheBench() {
        enter(
                "2026-05-01T08:00:00Z",
                new Fact.BenchOpened(new Settings(
                        "Larkmoor",
                        Units.METRIC,
                        RuleSet.EU,
                        new Surroundings(
                                StatedTemperature.of("15", TemperatureUnit.CELSIUS),
                                StatedAbsolutePressure.STANDARD,
                                StatedVolume.of("0", VolumeUnit.LITRE)),
                        bar("200"),
                        List.of("Iris Holm"))));
        enter(
                "2026-05-01T08:05:00Z",
                new Fact.BottleRegistered(
                        BOTTLE,
                        new BottleDetails(
                                "M-03",
                                "Nora Vale",
                                WaterVolume.stamped(StatedVolume.of("5", VolumeUnit.LITRE)),
                                bar("200"),
                                null,
                                bar("150")),
                        null));
    }

    private void enter(String at, Fact fact) {
        Instant when = Instant.parse(at);
        long seq = entries.size() + 1L;
        entries.add(new Entry(BENCH, seq, new Origin(new EntryKey("k" + seq), when, when, "Iris Holm"), fact));
    }

    private void fill(String at, String before, String after) {
        enter(
                at,
                new Fact.FillRecorded(
                        new FillId("f" + entries.size()),
                        BOTTLE,
                        bar("150"),
                        reading(at, before),
                        reading(at, after),
                        List.of()));
    }

    private static Reading reading(String at, String value) {
        return new Reading(
                bar(value), Instant.parse(at), StatedTemperature.of("15", TemperatureUnit.CELSIUS), false, null);
    }

    private static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    private PastUse past(String today) {
        Folding folding = Evolving.fold(entries.iterator());
        return FillsOfAJournal.of(((Folding.Folded) folding).bench(), entries, ZoneOffset.UTC, LocalDate.parse(today));
    }

    @Test
    void everyDaySinceTheBenchWasOpenedCountsAndTodayDoesNot() {
        fill("2026-05-03T10:00:00Z", "40", "150");
        fill("2026-05-11T10:00:00Z", "60", "150");
        PastUse past = past("2026-05-11");
        assertThat(past.history().from()).isEqualTo("2026-05-01");
        assertThat(past.history().days()).isEqualTo(10);
        assertThat(past.history().fills()).hasSize(1);
    }

    @Test
    void theStagesOfASessionCountOnceWithTheirFirstReading() {
        fill("2026-05-03T10:00:00Z", "40", "69");
        fill("2026-05-03T10:20:00Z", "68", "112");
        fill("2026-05-03T10:40:00Z", "110", "150");
        PastUse past = past("2026-05-10");
        assertThat(past.history().fills())
                .singleElement()
                .satisfies(filled -> assertThat(filled.fill().start().toBar()).isEqualTo(40.0));
    }

    @Test
    void aBottleUsedInBetweenCountsTwice() {
        fill("2026-05-03T10:00:00Z", "40", "150");
        fill("2026-05-03T17:00:00Z", "90", "150");
        assertThat(past("2026-05-10").history().fills()).hasSize(2);
    }

    @Test
    void bottlesComeWithTheReadingsTheyCameWith() {
        fill("2026-05-03T10:00:00Z", "40", "150");
        fill("2026-05-05T10:00:00Z", "80", "150");
        assertThat(past("2026-05-10").uses()).singleElement().satisfies(use -> {
            assertThat(use.startLowest().toBar()).isEqualTo(40.0);
            assertThat(use.startHighest().toBar()).isEqualTo(80.0);
            assertThat(use.share()).isEqualTo(2.0);
        });
    }

    @Test
    void aBenchWithoutAFillHasItsBottlesAndNoHistoryToGoBy() {
        PastUse past = past("2026-05-10");
        assertThat(past.tells()).isFalse();
        assertThat(past.usual()).hasSize(1);
        assertThat(past.history().fills()).isEmpty();
    }
}
