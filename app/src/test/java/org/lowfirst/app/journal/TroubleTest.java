package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.station.Fact;

/** Each thing that can be wrong with a database file gives one sentence of its own, and the file stays as it was. */
class TroubleTest {

    @TempDir
    private Path directory;

    @Test
    void aTextFileIsNotAJournal() throws IOException {
        Path file = directory.resolve("notes.db");
        String text = "dear diary, ".repeat(100);
        Files.writeString(file, text);
        assertThat(trouble(file)).isEqualTo(new Trouble.NotAJournal(file));
        assertThat(Files.readString(file)).isEqualTo(text);
    }

    @Test
    void aDatabaseOfAnotherProgramIsNotAJournal() throws SQLException {
        Path file = directory.resolve("other.db");
        execute(file, "CREATE TABLE notes (text TEXT)");
        assertThat(trouble(file)).isEqualTo(new Trouble.NotAJournal(file));
    }

    @Test
    void aDirectoryIsNotAJournal() {
        assertThat(trouble(directory)).isEqualTo(new Trouble.NotAJournal(directory));
    }

    @Test
    void tablesOfANewerVersionAreLeftAlone() throws SQLException {
        Path file = made();
        execute(
                file,
                "INSERT INTO flyway_schema_history VALUES (9, '99', 'x', 'SQL', 'V99__x.sql', 0, 'x', '2030', 0, 1)");
        assertThat(trouble(file)).isEqualTo(new Trouble.NewerVersion(file, "tables 99", "tables 2"));
    }

    @Test
    void anEntryOfANewerVersionStopsTheReading() throws SQLException {
        Path file = made();
        try (Journal journal = JournalTest.opened(file)) {
            journal.append(
                    Samples.BENCH,
                    Head.NONE,
                    List.of(NewEntry.of(Samples.origin("k1"), new Fact.BenchOpened(Samples.settings()))));
        }
        execute(
                file,
                "INSERT INTO entry SELECT bench, 2, 'k2', kind, 7, recorded_at, effective_at, author, payload,"
                        + " hash, hash, place_at, 2, 0 FROM entry");
        try (Journal journal = JournalTest.opened(file)) {
            assertThatExceptionOfType(JournalUnavailable.class)
                    .isThrownBy(() -> journal.listFrom(Samples.BENCH, 1))
                    .satisfies(e -> assertThat(e.trouble())
                            .isEqualTo(new Trouble.NewerVersion(
                                    file, "bench.opened version 7", "bench.opened version 1")));
        }
    }

    @Test
    void aFileLockedByAnotherProcessIsSaidToBe() throws SQLException {
        Path file = made();
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = other.createStatement()) {
            statement.execute("PRAGMA locking_mode = EXCLUSIVE");
            statement.execute("BEGIN EXCLUSIVE");
            assertThat(Journal.open(file, Duration.ofMillis(50)))
                    .isEqualTo(new Opening.CannotOpen(new Trouble.Locked(file)));
        }
    }

    @Test
    void aFileThatCannotBeWrittenIsSaidToBe() {
        Path file = made();
        try (Journal journal = JournalTest.opened(file)) {
            assertThatExceptionOfType(JournalUnavailable.class)
                    .isThrownBy(() -> journal.read(handle -> {
                        handle.execute("PRAGMA query_only = ON");
                        return Table.append(
                                handle,
                                new BenchRow(Samples.BENCH, false),
                                Head.NONE,
                                List.of(NewEntry.of(Samples.origin("k1"), new Fact.BenchOpened(Samples.settings()))));
                    }))
                    .satisfies(e -> assertThat(e.trouble()).isEqualTo(new Trouble.ReadOnly(file)));
        }
    }

    @Test
    void aDirectoryThatCannotBeMadeIsSaidToBe() throws IOException {
        Path inTheWay = Files.writeString(directory.resolve("file"), "x");
        Path file = inTheWay.resolve("lowfirst.db");
        assertThat(trouble(file)).isEqualTo(new Trouble.ReadOnly(file));
    }

    @Test
    void aFullDiskLosesNothingAndIsSaidToBe() {
        Path file = made();
        try (Journal journal = JournalTest.opened(file)) {
            journal.append(
                    Samples.BENCH,
                    Head.NONE,
                    List.of(NewEntry.of(Samples.origin("k1"), new Fact.BenchOpened(Samples.settings()))));
            Head head = journal.head(Samples.BENCH);
            Fact large = new Fact.BottleRetired(Samples.BOTTLE, "x".repeat(1_000_000));
            assertThatExceptionOfType(JournalUnavailable.class)
                    .isThrownBy(() -> journal.read(handle -> {
                        handle.execute("PRAGMA max_page_count = 1");
                        return Table.append(
                                handle,
                                new BenchRow(Samples.BENCH, false),
                                head,
                                List.of(NewEntry.of(Samples.origin("k2"), large)));
                    }))
                    .satisfies(e -> assertThat(e.trouble()).isEqualTo(new Trouble.DiskFull(file)));
            assertThat(journal.head(Samples.BENCH)).isEqualTo(head);
        }
    }

    @Test
    void aDamagedFileIsSaidToBe() throws IOException {
        Path file = made();
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 200; i < bytes.length; i++) {
            bytes[i] = (byte) 0xA5;
        }
        Files.write(file, bytes);
        assertThat(trouble(file)).isInstanceOf(Trouble.Damaged.class);
    }

    @Test
    void everyTroubleSaysWhatAndWhatToDo() {
        Path file = Path.of("lowfirst.db");
        List<Trouble> all = List.of(
                new Trouble.ReadOnly(file),
                new Trouble.Locked(file),
                new Trouble.NewerVersion(file, "tables 3", "tables 2"),
                new Trouble.NotAJournal(file),
                new Trouble.DiskFull(file),
                new Trouble.Damaged(file, "malformed"));
        assertThat(all.stream().map(Object::getClass).distinct())
                .hasSize(Trouble.class.getPermittedSubclasses().length);
        assertThat(all)
                .allSatisfy(trouble ->
                        assertThat(trouble.inWords()).contains("lowfirst.db").endsWith("."));
    }

    private Path made() {
        Path file = directory.resolve("lowfirst.db");
        JournalTest.opened(file).close();
        return file;
    }

    private static Trouble trouble(Path file) {
        if (Journal.open(file) instanceof Opening.CannotOpen cannot) {
            return cannot.trouble();
        }
        throw new AssertionError("it opened");
    }

    private static void execute(Path file, String statement) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement run = connection.createStatement()) {
            run.execute(statement);
        }
    }
}
