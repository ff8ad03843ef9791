package org.lowfirst.station;

import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/** Folds entries into the state of a bench. */
public final class Evolving {

    private Evolving() {}

    /**
     * The bench after one more entry.
     *
     * @param bench the bench before, null before it was opened
     * @param entry an entry that counts as it stands; a correction is resolved first, see {@link Corrections#counting}
     * @throws IllegalStateException when the entry does not fit the bench
     */
    public static Bench evolve(@Nullable Bench bench, Entry entry) {
        Ledger ledger = new Ledger(bench);
        Refused refused = ledger.enter(entry);
        if (refused != null) {
            throw new IllegalStateException("The entry " + entry.seq() + " of bench " + entry.bench()
                    + " does not fit what went before: " + refused.rule() + ", " + refused.subject() + ".");
        }
        return ledger.toBench();
    }

    /**
     * The bench after all its entries.
     *
     * @param entries the entries that count, in the order they count, see {@link Timeline}
     */
    public static Folding fold(Iterator<Entry> entries) {
        Ledger ledger = new Ledger(null);
        while (entries.hasNext()) {
            Entry entry = entries.next();
            Refused refused = ledger.enter(entry);
            if (refused != null) {
                return new Folding.Broken(entry, refused);
            }
        }
        return ledger.opened() ? new Folding.Folded(ledger.toBench()) : new Folding.Nothing();
    }
}
