package org.lowfirst.web.journal;

import java.util.Locale;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/**
 * What came of checking the journal from its first entry to its head.
 *
 * @param whole whether every entry is unchanged and in its place
 * @param told what was found, in a sentence
 * @param head hash of the newest entry in groups; empty when the chain is broken
 * @param checked when it was checked
 */
public record ChainPage(Place place, boolean whole, String told, String head, String checked) implements Page {

    static ChainPage of(BenchNow now, Verification verification) {
        String checked = now.times().full(now.now());
        if (verification instanceof Verification.Whole whole) {
            return new ChainPage(
                    now.place(),
                    true,
                    now.words().count("chain.whole", whole.head().seq()),
                    whole.head().hash().replaceAll("(.{8})(?!$)", "$1 "),
                    checked);
        }
        Verification.Broken broken = (Verification.Broken) verification;
        String wrong = now.words().of("chain.wrong." + broken.wrong().name().toLowerCase(Locale.ROOT));
        return new ChainPage(now.place(), false, now.words().of("chain.broken", broken.seq(), wrong), "", checked);
    }

    @Override
    public String template() {
        return "chain";
    }

    @Override
    public String title(Words words) {
        return words.of("chain.title");
    }

    @Override
    public Section section() {
        return Section.JOURNAL;
    }

    @Override
    public Place at() {
        return place;
    }
}
