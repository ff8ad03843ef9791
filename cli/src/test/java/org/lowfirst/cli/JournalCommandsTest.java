package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;

/** Verifying, exporting and importing a journal with two entries. */
final class JournalCommandsTest {

    @TempDir
    Path folder;

    private String data;

    @BeforeEach
    void openABenchAndRenameIt() {
        data = folder.resolve("data").toString();
        Opening opening = Journal.open(folder.resolve("data").resolve("lowfirst.db"));
        Clock clock = Clock.fixed(Instant.parse("2026-06-14T10:00:00Z"), ZoneOffset.UTC);
        try (Benches benches =
                new Benches(((Opening.Opened) opening).journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH)) {
            BenchId bench = new BenchId("bench");
            assertThat(benches.openingABench().open(bench, settings("Larkmoor"), submission("k1")))
                    .isInstanceOf(Recording.Recorded.class);
            assertThat(benches.openingABench().changeSettings(bench, settings("Larkmoor East"), submission("k2")))
                    .isInstanceOf(Recording.Recorded.class);
        }
    }

    @Test
    void aWholeJournalIsVerified() {
        CommandRun run = CommandRun.of("journal", "verify", "--data", data);
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).startsWith("bench: 2 entries, chain whole, head ");
    }

    @Test
    void aChangedEntryIsFound() throws SQLException {
        try (Connection database = DriverManager.getConnection("jdbc:sqlite:" + data + "/lowfirst.db");
                Statement statement = database.createStatement()) {
            statement.execute("DROP TRIGGER entry_is_never_changed");
            statement.execute("UPDATE entry SET author = 'Tom' WHERE seq = 2");
        }
        CommandRun run = CommandRun.of("journal", "verify", "--data", data);
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).startsWith("bench: the chain breaks at entry 2");
    }

    @Test
    void whatIsExportedIsImportedAndExportedAlike() throws IOException {
        Path file = folder.resolve("journal.jsonl");
        assertThat(CommandRun.of("journal", "export", "--data", data, file.toString())
                        .exit())
                .isEqualTo(0);
        String exported = Files.readString(file);
        assertThat(exported.lines()).hasSize(3);
        String other = folder.resolve("other").toString();
        CommandRun dry = CommandRun.of("journal", "import", "--data", other, "--dry-run", file.toString());
        assertThat(dry.exit()).isEqualTo(0);
        assertThat(dry.out()).contains("bench: 2 entries new").contains("nothing was written");
        CommandRun run = CommandRun.of("journal", "import", "--data", other, file.toString());
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).startsWith("bench: 2 entries new, 0 already here");
        assertThat(CommandRun.of("journal", "export", "--data", other).out()).isEqualTo(exported);
        assertThat(CommandRun.piped(exported, "journal", "import", "--data", other, "-")
                        .out())
                .startsWith("bench: 0 entries new, 2 already here");
    }

    @Test
    void aFileThatIsThereIsNotOverwritten() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.txt"), "mine");
        CommandRun run = CommandRun.of("journal", "export", "--data", data, file.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("is there already and was left as it is");
        assertThat(file).hasContent("mine");
    }

    @Test
    void anExportThatCannotBeWrittenIsSaidSo() {
        CommandRun run = CommandRun.of(
                "journal",
                "export",
                "--data",
                data,
                folder.resolve("none").resolve("a.jsonl").toString());
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("could not be written").contains("permissions");
    }

    @Test
    void aWrongLineIsShownInItsPlaceAndNothingIsImported() {
        String exported = CommandRun.of("journal", "export", "--data", data).out();
        String wrong = exported.replace("Larkmoor East", "Larkmoor West");
        String other = folder.resolve("other").toString();
        CommandRun run = CommandRun.piped(wrong, "journal", "import", "--data", other, "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("standard input:3:")
                .contains("error: ")
                .contains("\n    3 | ", "      | ");
        assertThat(run.err()).endsWith("Nothing was imported.\n");
        assertThat(CommandRun.of("journal", "verify", "--data", other).out()).startsWith("No bench yet");
    }

    @Test
    void aMissingJournalIsNotMade() {
        CommandRun run = CommandRun.of(
                "journal", "verify", "--data", folder.resolve("none").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("there is no journal at").contains("--data");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void anotherKindOfFileIsNotTakenForAJournal() throws IOException {
        Files.createDirectories(folder.resolve("odd"));
        Files.writeString(folder.resolve("odd").resolve("lowfirst.db"), "not a database, just a longer line of text\n");
        CommandRun run = CommandRun.of(
                "journal", "verify", "--data", folder.resolve("odd").toString());
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("is not a Lowfirst database");
    }

    @Test
    void journalAloneSaysWhatItCanDo() {
        CommandRun run = CommandRun.of("journal");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("verify, export, import");
    }

    private static Submission submission(String key) {
        return Submission.now(new EntryKey(key), "Pat");
    }

    private static Settings settings(String name) {
        return new Settings(
                name,
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                        StatedAbsolutePressure.STANDARD,
                        StatedVolume.of("0", VolumeUnit.LITRE)),
                StatedPressure.of("200", PressureUnit.BAR),
                List.of("Pat"));
    }
}
