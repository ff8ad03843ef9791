package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.app.bench.Station.BENCH;
import static org.lowfirst.app.bench.Station.bar;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.app.journal.Appending;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.NewEntry;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.Command.DescribeGauge;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Origin;
import org.lowfirst.station.SupplyId;

/** A journal of which the oldest entries are not gone through for spreads and verdicts. */
class LongJournalTest {

    private static final int READINGS = 5_200;

    @Test
    void whatWasDescribedLongAgoStillCountsAndTheLatestReadingsAreJudged(@TempDir Path directory) {
        try (Station station = Station.at(directory, "18")) {
            GaugeDetails fine = new GaugeDetails(
                    "Fine", GaugeUse.SUPPLIES, bar("250"), bar("1"), new BigDecimal("0.6"), null, null);
            station.recorded(
                    station.benches.keepingGauges().describe(BENCH, new DescribeGauge(fine), station.submission()));
            SupplyId supply = station.supply("A", "150");
            Journal journal = station.benches.journal();
            List<NewEntry> entries = new ArrayList<>();
            for (int i = 0; i < READINGS; i++) {
                station.clock.forward(Duration.ofHours(1));
                Origin origin =
                        new Origin(new EntryKey("r" + i), station.clock.instant(), station.clock.instant(), "Ida");
                entries.add(NewEntry.of(
                        origin, new Fact.ReadingTaken(supply, station.reads(i < READINGS - 1 ? "150" : "140"))));
            }
            assertThat(journal.append(BENCH, journal.head(BENCH), entries)).isInstanceOf(Appending.Appended.class);
            ReadingHistory history = station.benches.judgingReadings().history(BENCH);
            assertThat(history.leftOut()).isEqualTo(journal.head(BENCH).seq() - 5_000);
            assertThat(history.gauges()).singleElement().satisfies(gauge -> {
                assertThat(gauge.name()).isEqualTo("Fine");
                assertThat(gauge.inUse()).isTrue();
            });
            assertThat(history.find(supply).orElseThrow().verdict())
                    .isNotNull()
                    .satisfies(
                            verdict -> assertThat(verdict.code()).isNotEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY));
        }
    }
}
