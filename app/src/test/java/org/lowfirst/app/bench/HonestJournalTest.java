package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.app.bench.Station.BENCH;
import static org.lowfirst.app.bench.Station.bar;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.honest.CylinderNow;
import org.lowfirst.app.honest.GaugeNow;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.app.honest.StandingVerdict;
import org.lowfirst.planning.contents.GaugeOffset;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.DescribeGauge;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.FillId;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Stage;
import org.lowfirst.station.SupplyId;

/** What a journal teaches about gauges, what of it cannot be used, and what became of supplies that were open together. */
class HonestJournalTest {

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

    private void describe(String name, GaugeUse use, String fullScale, String percent) {
        GaugeDetails gauge = new GaugeDetails(name, use, bar(fullScale), bar("1"), new BigDecimal(percent), null, null);
        station.recorded(
                station.benches.keepingGauges().describe(BENCH, new DescribeGauge(gauge), station.submission()));
    }

    private ReadingHistory history() {
        return station.benches.judgingReadings().history(BENCH);
    }

    private @Nullable StandingVerdict verdict(SupplyId supply) {
        return history().find(supply).map(CylinderNow::verdict).orElse(null);
    }

    private void read(SupplyId supply, String reading) {
        station.recorded(station.benches
                .takingReadings()
                .take(BENCH, new TakeReading(supply, station.reads(reading)), station.submission()));
    }

    private GaugeNow gauge(String name) {
        return history().gauges().stream()
                .filter(gauge -> gauge.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Each stage ends equal, and the bottle's gauge then shows 4 bar more than the supply's. */
    private void fillThatEndsEqual(int number, SupplyId supply, BottleId bottle, int equal) {
        station.clock.forward(Duration.ofDays(1));
        Stage stage = new Stage(
                supply, station.reads(Integer.toString(equal + 4)), null, station.reads(Integer.toString(equal)));
        station.recorded(station.benches
                .guidingAFill()
                .recordFill(
                        BENCH,
                        new RecordFill(
                                new FillId("fill-" + number),
                                bottle,
                                bar("200"),
                                station.reads("20"),
                                station.reads(Integer.toString(equal + 4)),
                                List.of(stage)),
                        station.submission()));
    }

    @Test
    void twoGaugesOnOnePressureTeachWhichShowsMoreAndSayItInWords() {
        describe("Panel", GaugeUse.SUPPLIES, "315", "1.0");
        describe("Whip", GaugeUse.BOTTLES, "315", "1.6");
        SupplyId supply = station.supply("A", "160");
        for (int i = 0; i < 8; i++) {
            fillThatEndsEqual(i, supply, station.bottle("M" + i, "5", "20"), 146 - 12 * i);
        }
        GaugeNow whip = gauge("Whip");
        GaugeOffset learned = Objects.requireNonNull(whip.learned());
        assertThat(learned.tooHigh().toBar()).isBetween(1.5, 4.0);
        assertThat(whip.sentence()).contains("By the journal it shows").contains("too much, known within");
        assertThat(gauge("Panel").gauge().limit().toBar()).isLessThan(3.2);
    }

    @Test
    void aReadingThatItsGaugeCannotHaveShownIsKeptAndNotUsed() {
        SupplyId supply = station.supply("A", "190");
        describe("Small", GaugeUse.SUPPLIES, "160", "1.6");
        assertThat(history().refused()).hasSize(1);
        assertThat(history().refused().get(0).why().code()).isEqualTo("above-full-scale");
        assertThat(history().refused().get(0).why().sentence())
                .isEqualTo(
                        "The reading of supply A on 2026-06-14 (190 bar) is above the full scale of its gauge (160 bar).");
        assertThat(history().refused().get(0).why().advice()).startsWith("Please");
        assertThat(history().find(supply)).isEmpty();
        station.clock.forward(Duration.ofDays(1));
        read(supply, "150");
        assertThat(history().find(supply)).isPresent();
        assertThat(station.benches.readingTheJournal().listLines(BENCH, 0, 10))
                .anyMatch(line -> line.sentence().contains("connected at 190 bar"));
    }

    @Test
    void suppliesThatWereOpenTogetherStartAnewAndAreAccusedOfNothing() {
        SupplyId first = station.supply("A", "100");
        SupplyId second = station.supply("B", "180");
        station.clock.forward(Duration.ofHours(2));
        station.recorded(station.benches
                .keepingTheBank()
                .recordTwoOpenTogether(
                        BENCH,
                        new RecordTwoOpenTogether(first, second, station.reads("141"), station.reads("141")),
                        station.submission()));
        assertThat(verdict(first)).isNull();
        assertThat(verdict(second)).isNull();
        station.clock.forward(Duration.ofDays(3));
        read(first, "141");
        read(second, "126");
        assertThat(Objects.requireNonNull(verdict(first)).code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
        assertThat(Objects.requireNonNull(verdict(second)).code()).isEqualTo(VerdictCode.LIKELY_LEAK);
    }

    @Test
    void aSupplyNobodyReadAfterItWasOpenWithAnotherIsWhatItReadsNext() {
        SupplyId first = station.supply("A", "100");
        SupplyId second = station.supply("B", "180");
        station.clock.forward(Duration.ofHours(2));
        station.recorded(station.benches
                .keepingTheBank()
                .recordTwoOpenTogether(
                        BENCH,
                        new RecordTwoOpenTogether(first, second, station.reads("141"), null),
                        station.submission()));
        station.clock.forward(Duration.ofDays(3));
        read(second, "140");
        assertThat(verdict(second)).isNull();
        assertThat(history().find(second).orElseThrow().estimate().mean_mol()).isPositive();
    }
}
