package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.BenchSummary;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Happening;
import org.lowfirst.station.OutlookFact;

/** Looking ahead for the demo bench, from its journal. */
final class AheadFromAJournalTest {

    @TempDir
    Path folder;

    private String data = "";

    @BeforeEach
    void loadTheDemoBench() {
        data = folder.resolve("data").toString();
        Opening opening = Journal.open(folder.resolve("data").resolve("lowfirst.db"));
        Clock clock = Clock.fixed(Instant.parse("2026-06-14T10:00:00Z"), ZoneOffset.UTC);
        try (Benches benches =
                new Benches(((Opening.Opened) opening).journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH)) {
            benches.loadingTheDemoBench().load();
            assertThat(benches.openingABench().listBenches())
                    .extracting(BenchSummary::demo)
                    .containsExactly(true);
        }
    }

    @Test
    void theJournalsFillsAreTheHistory() {
        CommandRun run = CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--json");
        assertThat(run.err()).isEmpty();
        assertThat(run.json().get("knowledge").get("fills").asInt()).isPositive();
        assertThat(run.json().get("today").asString()).isEqualTo("2026-06-15");
        CommandRun again = CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--json");
        assertThat(again.out()).isEqualTo(run.out());
    }

    @Test
    void aPlannedEventIsCountedAndTold() {
        CommandRun quiet = CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--json");
        CommandRun week =
                CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--json", "--event", "2026-06-20/7=14");
        double more = week.json().get("fills_per_week").asDouble()
                - quiet.json().get("fills_per_week").asDouble();
        assertThat(more).isBetween(3.0, 4.0);
        assertThat(week.json().get("notes").toString()).contains("from 2026-06-20 on, 14 more fills in 7 days.");
        CommandRun unreadable = CommandRun.of("ahead", "--data", data, "--event", "in May");
        assertThat(unreadable.exit()).isEqualTo(2);
        assertThat(unreadable.err()).contains("the event (in May) must be DATE=FILLS or DATE/DAYS=FILLS");
    }

    @Test
    void whatTheBenchKeepsIsTakenUnlessTheCommandSaysOtherwise() {
        keep();
        CommandRun kept = CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--json");
        assertThat(kept.json().get("lead_days").asInt()).isEqualTo(9);
        assertThat(kept.json().get("reserve_fills").asInt()).isEqualTo(4);
        assertThat(kept.json().get("notes").toString()).contains("Planned: Exercise on 2026-06-20, 6 more fills.");
        CommandRun typed =
                CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--json", "--lead-days", "1");
        assertThat(typed.json().get("lead_days").asInt()).isEqualTo(1);
        assertThat(typed.json().get("reserve_fills").asInt()).isEqualTo(4);
    }

    private void keep() {
        Opening opening = Journal.open(folder.resolve("data").resolve("lowfirst.db"));
        Clock clock = Clock.fixed(Instant.parse("2026-06-14T10:00:00Z"), ZoneOffset.UTC);
        try (Benches benches =
                new Benches(((Opening.Opened) opening).journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH)) {
            BenchId bench = benches.openingABench().listBenches().get(0).id();
            benches.keepingTheOutlook()
                    .enter(
                            bench,
                            new OutlookFact.FiguresKept(Map.of(
                                    AheadFigure.LEAD_DAYS, new BigDecimal("9"),
                                    AheadFigure.RESERVE_FILLS, new BigDecimal("4"))),
                            new Submission(new EntryKey("keep-1"), "Ida", null, false));
            benches.keepingTheOutlook()
                    .enter(
                            bench,
                            new OutlookFact.HappeningPlanned(
                                    new Happening("Exercise", LocalDate.of(2026, 6, 20), 1, new BigDecimal("6"))),
                            new Submission(new EntryKey("keep-2"), "Ida", null, false));
        }
    }

    @Test
    void aBenchThatIsNotThereAndADayThatIsNoneEndWithTwo() {
        CommandRun bench = CommandRun.of("ahead", "--data", data, "--bench", "Nowhere");
        assertThat(bench.exit()).isEqualTo(2);
        assertThat(bench.err()).contains("there is no one bench \"Nowhere\"");
        CommandRun day = CommandRun.of("ahead", "--data", data, "--today", "soon");
        assertThat(day.exit()).isEqualTo(2);
        assertThat(day.err()).contains("must be a day of the calendar");
        CommandRun lead = CommandRun.of("ahead", "--data", data, "--today", "2026-06-15", "--lead-days", "-1");
        assertThat(lead.exit()).isEqualTo(2);
        assertThat(lead.err()).contains("days from order to delivery (-1)");
    }
}
