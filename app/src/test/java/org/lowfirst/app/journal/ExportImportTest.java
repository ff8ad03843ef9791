package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;

class ExportImportTest {

    private static final BenchId OTHER = new BenchId("another");

    @TempDir
    private Path directory;

    private Journal from;
    private Journal to;

    @BeforeEach
    void open() {
        from = JournalTest.opened(directory.resolve("from.db"));
        to = JournalTest.opened(directory.resolve("to.db"));
        fill(from, Samples.BENCH);
        fill(from, OTHER);
    }

    @AfterEach
    void close() {
        from.close();
        to.close();
    }

    @Test
    void exportImportExportGivesIdenticalBytes() throws IOException {
        String exported = export(from);
        assertThat(read(exported, false)).isInstanceOf(Importing.Imported.class);
        assertThat(export(to)).isEqualTo(exported);
        assertThat(to.head(OTHER)).isEqualTo(from.head(OTHER));
        assertThat(order(to)).isEqualTo(order(from)).containsExactly(1L, 2L, 3L, 5L, 4L, 6L);
    }

    @Test
    void aDryRunTellsTheSameAndWritesNothing() throws IOException {
        Importing dry = read(export(from), true);
        assertThat(dry).isInstanceOfSatisfying(Importing.Imported.class, imported -> {
            assertThat(imported.dryRun()).isTrue();
            assertThat(imported.benches())
                    .containsExactly(
                            new Importing.OfBench(OTHER, 6, 0, from.head(OTHER)),
                            new Importing.OfBench(Samples.BENCH, 6, 0, from.head(Samples.BENCH)));
        });
        assertThat(to.listBenches()).isEmpty();
    }

    @Test
    void aJournalThatIsTheBeginningOfTheFileIsContinued() throws IOException {
        String before = export(from);
        read(before, false);
        append(from, Samples.BENCH, "k9", reading("59"), 900, 0);
        Importing again = read(export(from), false);
        assertThat(again)
                .isInstanceOfSatisfying(
                        Importing.Imported.class,
                        imported -> assertThat(imported.benches())
                                .contains(new Importing.OfBench(Samples.BENCH, 1, 6, from.head(Samples.BENCH))));
        assertThat(export(to)).isEqualTo(export(from));
    }

    @Test
    void anOlderFileAddsNothing() throws IOException {
        String before = export(from);
        append(from, Samples.BENCH, "k9", reading("59"), 900, 0);
        read(export(from), false);
        Importing older = read(before, false);
        assertThat(older)
                .isInstanceOfSatisfying(
                        Importing.Imported.class,
                        imported -> assertThat(imported.benches())
                                .contains(new Importing.OfBench(Samples.BENCH, 0, 6, from.head(Samples.BENCH))));
    }

    @Test
    void journalsThatWentDifferentWaysAreNotJoined() throws IOException {
        read(export(from), false);
        append(from, Samples.BENCH, "k9", reading("59"), 900, 0);
        append(to, Samples.BENCH, "k8", reading("58"), 900, 0);
        String before = export(to);
        assertThat(bad(export(from))).satisfies(line -> {
            assertThat(line.line()).isEqualTo(15);
            assertThat(line.what()).contains("entry 7 of larkmoor is not the one that is here");
        });
        assertThat(export(to)).isEqualTo(before);
    }

    @Test
    void aChangedDigitIsFoundInItsLineAndNothingIsImported() throws IOException {
        String changed = export(from).replaceFirst("\"gauge\":\"57\"", "\"gauge\":\"75\"");
        assertThat(bad(changed)).satisfies(line -> {
            assertThat(line.line()).isEqualTo(5);
            assertThat(line.what()).isEqualTo("entry 4 of another was changed after it was written: its hash differs");
            assertThat(line.text()).contains("\"gauge\":\"75\"");
        });
        assertThat(to.listBenches()).isEmpty();
    }

    @Test
    void aMissingLineIsFound() throws IOException {
        List<String> lines = lines();
        lines.remove(3);
        assertThat(bad(String.join("\n", lines))).satisfies(line -> {
            assertThat(line.line()).isEqualTo(4);
            assertThat(line.what()).isEqualTo("entry 3 was expected, not 4");
        });
    }

    @Test
    void aFileCutShortIsFound() throws IOException {
        List<String> lines = lines();
        assertThat(bad(String.join("\n", lines.subList(0, lines.size() - 1))))
                .satisfies(line -> assertThat(line.what())
                        .startsWith("the journal of larkmoor ends at entry 5; the header announced 6 entries"));
        assertThat(to.listBenches()).isEmpty();
    }

    @Test
    void aLineThatIsNoJsonIsFoundWithItsColumn() throws IOException {
        List<String> lines = lines();
        lines.set(2, "{\"author\":oops}");
        assertThat(bad(String.join("\n", lines))).satisfies(line -> {
            assertThat(line.line()).isEqualTo(3);
            assertThat(line.column()).isBetween(10, 16);
            assertThat(line.text()).isEqualTo("{\"author\":oops}");
        });
    }

    @Test
    void anotherFileIsSaidToBeAnother() throws IOException {
        assertThat(bad("{\"a\":1}").what()).contains("the header of a bench was expected");
        assertThat(bad("").what()).contains("the file is empty");
        assertThat(bad("name,litres").what()).isNotBlank();
    }

    @Test
    void aFileOfANewerVersionIsLeftAlone() throws IOException {
        String newer = export(from).replaceFirst("\"version\":1}", "\"version\":2}");
        assertThat(bad(newer).what()).contains("written by a newer version (format 2");
    }

    @Test
    void whatDoesNotFoldIsNotImported() throws IOException {
        append(from, Samples.BENCH, "k9", new Fact.FillFinished(Samples.FILL, Samples.reads("150")), 950, 0);
        assertThat(bad(export(from)).what())
                .isEqualTo("entry 7 of larkmoor does not fit what went before (FILL_UNKNOWN)");
    }

    @Test
    void aBackupIsACheckedCopy() throws IOException {
        Backup backup = Backup.of(from, directory.resolve("copy.db"));
        assertThat(backup.whole()).isTrue();
        assertThat(backup.journals())
                .containsExactly(
                        new Verification.Whole(Samples.BENCH, from.head(Samples.BENCH)),
                        new Verification.Whole(OTHER, from.head(OTHER)));
        try (Journal copy = JournalTest.opened(backup.file())) {
            assertThat(export(copy)).isEqualTo(export(from));
        }
    }

    private static void fill(Journal journal, BenchId bench) {
        append(journal, bench, "k1", new Fact.BenchOpened(Samples.settings()), 0, 0);
        append(journal, bench, "k2", new Fact.SupplyConnected(Samples.A, Samples.supply(), Samples.reads("62")), 0, 0);
        append(journal, bench, "k3", new Fact.BottleRegistered(Samples.BOTTLE, Samples.bottle(), null), 0, 0);
        append(journal, bench, "k4", reading("57"), 720, 0);
        append(journal, bench, "k5", reading("60"), 300, 0);
        append(journal, bench, "k6", new Fact.EntryCorrected(4, "slip", reading("58")), 720, 4);
    }

    private static Fact reading(String bar) {
        return new Fact.ReadingTaken(Samples.A, Samples.reads(bar));
    }

    private static void append(Journal journal, BenchId bench, String key, Fact fact, int second, long place) {
        Instant recorded = Samples.TEN.plusSeconds(3600);
        Origin origin = new Origin(new EntryKey(key), recorded, Samples.TEN.plusSeconds(second), "Ida \"\u00e4\"");
        assertThat(journal.append(bench, journal.head(bench), List.of(new NewEntry(origin, fact, place))))
                .isInstanceOf(Appending.Appended.class);
    }

    private static List<Long> order(Journal journal) {
        return journal.inPlaceOrder(Samples.BENCH, rows -> {
            List<Long> seqs = new ArrayList<>();
            rows.forEachRemaining(entry -> seqs.add(entry.seq()));
            return seqs;
        });
    }

    private List<String> lines() throws IOException {
        return new ArrayList<>(Arrays.asList(export(from).split("\n")));
    }

    private Importing.BadLine bad(String text) throws IOException {
        Importing importing = read(text, false);
        assertThat(importing).isInstanceOf(Importing.BadLine.class);
        return (Importing.BadLine) importing;
    }

    private Importing read(String text, boolean dryRun) throws IOException {
        return JournalImport.read(to, new BufferedReader(new StringReader(text)), dryRun);
    }

    private static String export(Journal journal) throws IOException {
        StringWriter out = new StringWriter();
        JournalExport.write(journal, out);
        return out.toString();
    }
}
