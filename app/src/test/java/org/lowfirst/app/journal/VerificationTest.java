package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.station.Fact;

/** Somebody who can write the file can drop the triggers; the chain shows it all the same. */
class VerificationTest {

    @TempDir
    private Path directory;

    private Journal journal;

    @BeforeEach
    void open() {
        journal = JournalTest.opened(directory.resolve("lowfirst.db"));
        Head head = append(Head.NONE, "k1", new Fact.BenchOpened(Samples.settings()));
        head = append(head, "k2", new Fact.SupplyConnected(Samples.A, Samples.supply(), Samples.reads("62")));
        append(head, "k3", new Fact.ReadingTaken(Samples.A, Samples.reads("60")));
        journal.read(handle -> handle.execute("DROP TRIGGER entry_is_never_changed"));
        journal.read(handle -> handle.execute("DROP TRIGGER entry_is_never_deleted"));
    }

    @AfterEach
    void close() {
        journal.close();
    }

    @Test
    void anUntouchedChainIsWhole() {
        assertThat(Verification.of(journal, Samples.BENCH))
                .isEqualTo(new Verification.Whole(Samples.BENCH, journal.head(Samples.BENCH)));
    }

    @Test
    void aChangedPayloadIsFound() {
        changes("UPDATE entry SET payload = replace(payload, '62', '63') WHERE seq = 2", 2, Verification.Wrong.HASH);
    }

    @Test
    void aChangedAuthorIsFound() {
        changes("UPDATE entry SET author = 'Tom' WHERE seq = 1", 1, Verification.Wrong.HASH);
    }

    @Test
    void aChangedTimeIsFound() {
        changes("UPDATE entry SET effective_at = effective_at - 1 WHERE seq = 3", 3, Verification.Wrong.HASH);
    }

    @Test
    void anEntryMovedInTheOrderIsFound() {
        changes("UPDATE entry SET place_at = place_at - 1 WHERE seq = 3", 3, Verification.Wrong.PLACE);
    }

    @Test
    void aMissingEntryIsFound() {
        changes("DELETE FROM entry WHERE seq = 2", 3, Verification.Wrong.SEQUENCE);
    }

    @Test
    void aHashThatWasMadeToFitIsFoundAtTheNextEntry() {
        changes(
                "UPDATE entry SET hash = '" + "a".repeat(64) + "', previous = previous WHERE seq = 1",
                1,
                Verification.Wrong.HASH);
        changes("UPDATE entry SET previous = '" + "b".repeat(64) + "' WHERE seq = 1", 1, Verification.Wrong.PREVIOUS);
    }

    private void changes(String statement, long seq, Verification.Wrong wrong) {
        journal.read(handle -> handle.execute(statement));
        Verification.Broken broken = new Verification.Broken(Samples.BENCH, seq, wrong);
        assertThat(Verification.of(journal, Samples.BENCH)).isEqualTo(broken);
        assertThat(broken.inWords()).contains("breaks at entry " + seq);
    }

    private Head append(Head head, String key, Fact fact) {
        journal.append(Samples.BENCH, head, List.of(NewEntry.of(Samples.origin(key), fact)));
        return journal.head(Samples.BENCH);
    }
}
