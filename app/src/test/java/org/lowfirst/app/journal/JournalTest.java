package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;

class JournalTest {

    private static final BenchId BENCH = Samples.BENCH;
    private static final Fact OPENED = new Fact.BenchOpened(Samples.settings());
    private static final Fact CONNECTED = new Fact.SupplyConnected(Samples.A, Samples.supply(), Samples.reads("62"));

    @TempDir
    private Path directory;

    private Journal journal;

    @BeforeEach
    void open() {
        journal = opened(directory.resolve("lowfirst.db"));
    }

    @AfterEach
    void close() {
        journal.close();
    }

    @Test
    void whatIsAppendedIsReadBackWithItsPlaceInTheChain() {
        Head head = append(Head.NONE, "k1", OPENED);
        append(head, "k2", CONNECTED);
        List<StoredEntry> stored = journal.listFrom(BENCH, 1);
        assertThat(stored).extracting(s -> s.entry().fact()).containsExactly(OPENED, CONNECTED);
        assertThat(stored).extracting(s -> s.entry().seq()).containsExactly(1L, 2L);
        assertThat(stored.get(0).previous()).isEqualTo("0".repeat(64));
        assertThat(stored.get(1).previous()).isEqualTo(stored.get(0).hash());
        assertThat(stored).allSatisfy(s -> assertThat(EntryText.hash(s)).isEqualTo(s.hash()));
    }

    @Test
    void itSurvivesClosingAndOpeningAgain() {
        Head head = append(Head.NONE, "k1", OPENED);
        journal.close();
        journal = opened(directory.resolve("lowfirst.db"));
        assertThat(journal.head(BENCH)).isEqualTo(head);
    }

    @Test
    void aRetryWithTheSameKeyIsTheSameEntry() {
        Head head = append(Head.NONE, "k1", OPENED);
        append(head, "k2", CONNECTED);
        Appending again = journal.append(BENCH, head, List.of(NewEntry.of(Samples.origin("k2"), CONNECTED)));
        assertThat(again)
                .isInstanceOfSatisfying(
                        Appending.Repeated.class,
                        repeated -> assertThat(repeated.entries())
                                .extracting(s -> s.entry().seq())
                                .containsExactly(2L));
        assertThat(journal.head(BENCH).seq()).isEqualTo(2);
    }

    @Test
    void anAppendThatWasOvertakenAddsNothing() {
        Head first = append(Head.NONE, "k1", OPENED);
        Head second = append(first, "k2", CONNECTED);
        Appending late = journal.append(BENCH, first, List.of(NewEntry.of(Samples.origin("k3"), CONNECTED)));
        assertThat(late).isEqualTo(new Appending.Overtaken(second));
        assertThat(journal.head(BENCH)).isEqualTo(second);
    }

    @Test
    void severalFactsAreAppendedTogetherUnderOneKey() {
        NewEntry opened = NewEntry.of(Samples.origin("k1"), OPENED);
        NewEntry connected = NewEntry.of(Samples.origin("k1"), CONNECTED);
        journal.append(BENCH, Head.NONE, List.of(opened, connected));
        assertThat(journal.listByKey(BENCH, new EntryKey("k1")))
                .extracting(s -> s.entry().fact())
                .containsExactly(OPENED, CONNECTED);
        assertThat(journal.append(BENCH, Head.NONE, List.of(opened, connected))).isInstanceOf(Appending.Repeated.class);
    }

    @Test
    void aBatchWithABadEntryLeavesNothing() {
        Head head = append(Head.NONE, "k1", OPENED);
        append(head, "k2.2", CONNECTED);
        Head before = journal.head(BENCH);
        NewEntry entry = NewEntry.of(Samples.origin("k2"), CONNECTED);
        assertThatExceptionOfType(JournalUnavailable.class)
                .isThrownBy(() -> journal.append(BENCH, before, List.of(entry, entry)));
        assertThat(journal.head(BENCH)).isEqualTo(before);
    }

    @Test
    void benchesDoNotShareAChain() {
        append(Head.NONE, "k1", OPENED);
        BenchId other = new BenchId("other");
        journal.append(other, Head.NONE, List.of(NewEntry.of(Samples.origin("k1"), OPENED)));
        assertThat(journal.listBenches()).containsExactly(new BenchRow(BENCH, false), new BenchRow(other, false));
        assertThat(journal.head(other).seq()).isEqualTo(1);
    }

    @Test
    void entriesAreNeverChangedOrDeleted() {
        append(Head.NONE, "k1", OPENED);
        for (String statement : List.of(
                "UPDATE entry SET author = 'x'",
                "DELETE FROM entry",
                "UPDATE bench SET demo = 1",
                "DELETE FROM bench")) {
            assertThatExceptionOfType(JournalUnavailable.class)
                    .as(statement)
                    .isThrownBy(() -> journal.read(handle -> handle.execute(statement)));
        }
        assertThat(journal.head(BENCH).seq()).isEqualTo(1);
    }

    @Test
    void onlyADemoBenchCanBeRemoved() {
        append(Head.NONE, "k1", OPENED);
        BenchRow demo = new BenchRow(new BenchId("demo"), true);
        journal.append(demo, Head.NONE, List.of(NewEntry.of(Samples.origin("k1"), OPENED)));
        assertThat(journal.removeDemo(BENCH)).isFalse();
        assertThat(journal.removeDemo(demo.id())).isTrue();
        assertThat(journal.listBenches()).containsExactly(new BenchRow(BENCH, false));
    }

    @Test
    void entriesComeInTheOrderTheyCount() {
        Head head = append(Head.NONE, "k1", OPENED);
        Instant ten = Samples.TEN;
        head = append(head, "k2", CONNECTED, ten);
        head = append(head, "k3", reading("57"), ten.plusSeconds(720));
        head = append(head, "k4", reading("58"), ten.plusSeconds(300));
        Fact correction = new Fact.EntryCorrected(3, "slip", reading("56"));
        journal.append(BENCH, head, List.of(new NewEntry(origin("k5", ten.plusSeconds(720)), correction, 3)));
        List<Long> order = journal.inPlaceOrder(BENCH, rows -> {
            List<Long> seqs = new ArrayList<>();
            rows.forEachRemaining(entry -> seqs.add(entry.seq()));
            return seqs;
        });
        assertThat(order).containsExactly(1L, 2L, 4L, 3L, 5L);
        assertThat(journal.listNewest(BENCH, 1, 2))
                .extracting(StoredEntry::entry)
                .extracting(Entry::seq)
                .containsExactly(3L, 4L);
        assertThat(journal.listCorrections(BENCH)).extracting(Entry::seq).containsExactly(5L);
    }

    private static Fact reading(String bar) {
        return new Fact.ReadingTaken(Samples.A, Samples.reads(bar));
    }

    private Head append(Head expected, String key, Fact fact) {
        return append(expected, key, fact, Samples.TEN);
    }

    private Head append(Head expected, String key, Fact fact, Instant effectiveAt) {
        Appending appending = journal.append(BENCH, expected, List.of(NewEntry.of(origin(key, effectiveAt), fact)));
        assertThat(appending).isInstanceOf(Appending.Appended.class);
        return journal.head(BENCH);
    }

    private static Origin origin(String key, Instant effectiveAt) {
        return new Origin(new EntryKey(key), Samples.TEN.plusSeconds(3600), effectiveAt, "Ida");
    }

    static Journal opened(Path file) {
        if (Journal.open(file) instanceof Opening.Opened opened) {
            return opened.journal();
        }
        throw new AssertionError(Journal.open(file));
    }
}
