package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.app.bench.Station.BENCH;
import static org.lowfirst.app.bench.Station.bar;
import static org.lowfirst.app.bench.Station.litres;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.honest.ComparingDelivery.DeliveryNote;
import org.lowfirst.app.honest.CylinderNow;
import org.lowfirst.app.honest.GaugeNow;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.app.honest.StandingVerdict;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.contents.Delivery;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.DescribeGauge;
import org.lowfirst.station.Command.RetireGauge;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;

/** Readings through the journal. Expected readings and litres: CoolProp 8.0.0 (Schmidt and Wagner), worked out outside. */
class HonestReadingsTest {

    @TempDir
    Path directory;

    private Station station;

    @BeforeEach
    void open() {
        station = Station.at(directory, "18");
    }

    @AfterEach
    void close() {
        station.close();
    }

    private Reading reads(String bar, String celsius) {
        return new Reading(
                bar(bar), station.clock.instant(), StatedTemperature.of(celsius, TemperatureUnit.CELSIUS), false, null);
    }

    private SupplyId connected(String name, String bar, String celsius) {
        SupplyId id = new SupplyId("supply-" + name);
        SupplyDetails details = new SupplyDetails(name, null, litres("50"), bar("200"));
        station.recorded(station.benches
                .keepingTheBank()
                .connect(BENCH, new ConnectSupply(id, details, reads(bar, celsius)), station.submission()));
        return id;
    }

    private Entry read(CylinderId cylinder, String bar, String celsius) {
        return station.recorded(station.benches
                        .takingReadings()
                        .take(BENCH, new TakeReading(cylinder, reads(bar, celsius)), station.submission()))
                .get(0);
    }

    private ReadingHistory history() {
        return station.benches.judgingReadings().history(BENCH);
    }

    private StandingVerdict verdict(CylinderId cylinder) {
        return history().find(cylinder).map(CylinderNow::verdict).orElseThrow();
    }

    @Test
    void lessOnAColdDayIsToBeWatchedAndLessOnAWarmerDayIsALikelyLeak() {
        SupplyId supply = connected("A", "142", "24");
        station.clock.forward(Duration.ofDays(7));
        read(supply, "127", "9");
        StandingVerdict watch = verdict(supply);
        assertThat(watch.code()).isEqualTo(VerdictCode.WATCH);
        assertThat(watch.name()).isEqualTo("watch: read again settled");
        assertThat(watch.sentence()).contains("132 bar").contains("127 bar");
        assertThat(watch.advice()).contains("24 C");
        station.clock.forward(Duration.ofDays(7));
        read(supply, "118", "21");
        StandingVerdict leak = verdict(supply);
        assertThat(leak.code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        assertThat(leak.name()).isEqualTo("likely leak");
        assertThat(leak.chance()).isEqualTo("less than 1 in a million");
    }

    @Test
    void aCorrectedReadingNoLongerCounts() {
        SupplyId supply = connected("A", "142", "24");
        station.clock.forward(Duration.ofDays(7));
        Entry slip = read(supply, "118", "24");
        assertThat(verdict(supply).code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        Fact.ReadingTaken meant = new Fact.ReadingTaken(supply, reads("142", "24"));
        station.recorded(station.benches
                .correctingAnEntry()
                .replace(BENCH, slip.seq(), "typing slip", meant, station.submission()));
        assertThat(verdict(supply).code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
    }

    @Test
    void aBenchWithoutGaugesSaysWhatItAssumes() {
        connected("A", "142", "24");
        assertThat(history().notes())
                .containsExactly(
                        "Nobody described the gauge on supplies: a scale to 315 bar and an error of at most 5 bar are assumed.");
    }

    @Test
    void aDescribedGaugeTakesThePlaceOfTheAssumedOneAndGoesWhenRetired() {
        SupplyId supply = connected("A", "142", "24");
        describe("Fine", GaugeUse.SUPPLIES, "0.6");
        assertThat(history().notes()).isEmpty();
        station.clock.forward(Duration.ofDays(7));
        read(supply, "139", "24");
        assertThat(verdict(supply).code()).isNotEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
        List<GaugeNow> gauges = station.benches.keepingGauges().list(BENCH);
        assertThat(gauges).extracting(GaugeNow::name).containsExactly("Fine");
        assertThat(gauges.get(0).gauge().limit().toBar()).isCloseTo(1.5, within(1e-9));
        assertThat(gauges.get(0).learned()).isNull();
        station.recorded(station.benches
                .keepingGauges()
                .retire(BENCH, new RetireGauge("Fine", "dropped"), station.submission()));
        assertThat(history().gauges()).noneMatch(GaugeNow::inUse);
    }

    private void describe(String name, GaugeUse use, String percent) {
        GaugeDetails gauge = new GaugeDetails(name, use, bar("250"), bar("1"), new BigDecimal(percent), null, null);
        station.recorded(
                station.benches.keepingGauges().describe(BENCH, new DescribeGauge(gauge), station.submission()));
    }

    /** A full one reads 200 bar at 15 C, which is about 190 at 6 C; 148 bar then is short by about 2,350 L, 22 %. */
    @Test
    void aSupplyThatCameShortGetsANoteForTheSupplier() {
        SupplyId supply = connected("P2", "148", "6");
        Outcome<DeliveryNote> outcome = station.benches.comparingDelivery().compare(BENCH, supply);
        assertThat(outcome).isInstanceOf(Outcome.Given.class);
        DeliveryNote note = ((Outcome.Given<DeliveryNote>) outcome).value();
        assertThat(note.delivery().code()).isEqualTo(Delivery.Code.SHORT);
        assertThat(note.delivery().fullWouldRead().toBar()).isCloseTo(190, within(0.6));
        assertThat(note.missing().toLitres()).isCloseTo(2_350, within(25.0));
        assertThat(note.percent()).isCloseTo(22, within(0.5));
        assertThat(note.note()).contains("148 bar").contains("190 bar").contains("(22 %)");
    }
}
