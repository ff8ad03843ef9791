package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.BenchSummary;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;

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
