package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lowfirst.app.fitness.RuleBookWords;
import org.lowfirst.app.fitness.RuleFileWords;
import org.lowfirst.app.fitness.RuleInWords;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.Judging;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.RuleBookReading;
import org.lowfirst.station.rules.RuleBookText;

/** Keeps the rule book of a bench. Every version stays in the journal. */
public final class KeepingRules {

    private static final String KIND = "rule-book.adopted";

    private final Recorder recorder;
    private final Locale locale;

    KeepingRules(Recorder recorder, Locale locale) {
        this.recorder = recorder;
        this.locale = locale;
    }

    /**
     * The book in force.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public RuleBook book(BenchId bench) {
        return Judging.book(recorder.getState(bench).bench());
    }

    /** The book in force as text, as it was entered. */
    public String text(BenchId bench) {
        Bench now = recorder.getState(bench).bench();
        String adopted = now.areas().gate().ruleBook();
        return adopted == null ? RuleBookText.write(Judging.book(now)) : adopted;
    }

    /** Whether it is the one that comes with the program, unchanged. */
    public boolean isBuiltIn(BenchId bench) {
        return RuleBookText.write(book(bench)).equals(builtInText(bench));
    }

    /** The built-in book of the bench's rule set, as text. */
    public String builtInText(BenchId bench) {
        return RuleBookText.write(
                recorder.getState(bench).bench().settings().rules() == RuleSet.US
                        ? BuiltInBooks.us()
                        : BuiltInBooks.eu());
    }

    /** A book in words, in the units of a bench. */
    public List<RuleInWords> inWords(BenchId bench, RuleBook book) {
        Bench now = recorder.getState(bench).bench();
        return new RuleBookWords(locale, now.settings().units()).list(book);
    }

    /** Reads a book without entering it. */
    public RuleBookReading read(String text) {
        return RuleBookText.read("rule book", text);
    }

    /** What is wrong with a book, in the language of the pages. */
    public String inWords(RuleBookReading.Malformed wrong) {
        return new RuleFileWords(locale).of(wrong.problem());
    }

    /** The whole book as it is from now on. For those who answer for the bench. */
    public Recording adopt(BenchId bench, String text, Submission submission) {
        return recorder.record(bench, new Enter(new GateFact.RuleBookAdopted(text)), submission);
    }

    /** The entries that adopted a book and count, newest first. */
    public List<Entry> listVersions(BenchId bench) {
        Corrections corrections = Corrections.of(recorder.journal().listCorrections(bench));
        List<Entry> versions = new ArrayList<>();
        for (StoredEntry stored : recorder.journal().listOfKind(bench, KIND)) {
            if (!corrections.struck(stored.entry().seq())) {
                versions.add(0, stored.entry());
            }
        }
        return versions;
    }

    /** The text one entry adopted. */
    public Optional<String> findVersion(BenchId bench, long seq) {
        return recorder.journal()
                .findEntry(bench, seq)
                .map(stored -> stored.entry().fact())
                .filter(GateFact.RuleBookAdopted.class::isInstance)
                .map(fact -> ((GateFact.RuleBookAdopted) fact).text());
    }
}
