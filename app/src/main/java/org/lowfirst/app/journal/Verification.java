package org.lowfirst.app.journal;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BenchId;

/** What came of checking a journal from its first entry to its head. */
public sealed interface Verification {

    /** What was found, in a sentence. */
    String inWords();

    /** Every entry is unchanged and in its place. */
    record Whole(BenchId bench, Head head) implements Verification {
        @Override
        public String inWords() {
            return String.format(Locale.ROOT, "%s: %d entries, chain whole, head %s.", bench, head.seq(), head.hash());
        }
    }

    /**
     * An entry is not what was written, or one before it is missing.
     *
     * @param seq number of the first entry that is wrong
     * @param wrong what about it is
     */
    record Broken(BenchId bench, long seq, Wrong wrong) implements Verification {
        @Override
        public String inWords() {
            return String.format(
                    Locale.ROOT,
                    "%s: the chain breaks at entry %d: %s. Restore the latest backup; entries before %d are whole.",
                    bench,
                    seq,
                    wrong.words,
                    seq);
        }
    }

    /** What can be wrong with an entry in a chain. */
    enum Wrong {
        SEQUENCE("its number does not follow"),
        PREVIOUS("it does not follow from the entry before"),
        HASH("its content is not what was hashed"),
        PLACE("it was moved to another place in the order");

        private final String words;

        Wrong(String words) {
            this.words = words;
        }
    }

    /** Checks every entry of a bench's journal. */
    static Verification of(Journal journal, BenchId bench) {
        ChainCheck check = new ChainCheck();
        journal.forEachBySeq(bench, check::next);
        Broken broken = check.broken();
        if (broken != null) {
            return broken;
        }
        long misplaced = journal.read(handle -> Table.firstMisplaced(handle, bench));
        return misplaced == 0 ? new Whole(bench, check.head()) : new Broken(bench, misplaced, Wrong.PLACE);
    }

    /** Follows a chain entry by entry and remembers the first that is wrong. */
    final class ChainCheck {

        private Head head = Head.NONE;
        private @Nullable Broken broken;

        void next(StoredEntry stored) {
            Wrong wrong = broken == null ? wrong(stored) : null;
            if (wrong != null) {
                broken = new Broken(stored.entry().bench(), stored.entry().seq(), wrong);
            }
            head = new Head(stored.entry().seq(), stored.hash());
        }

        private @Nullable Wrong wrong(StoredEntry stored) {
            if (stored.entry().seq() != head.seq() + 1) {
                return Wrong.SEQUENCE;
            } else if (!stored.previous().equals(head.hash())) {
                return Wrong.PREVIOUS;
            }
            return EntryText.hash(stored).equals(stored.hash()) ? null : Wrong.HASH;
        }

        @Nullable
        Broken broken() {
            return broken;
        }

        Head head() {
            return head;
        }
    }
}
