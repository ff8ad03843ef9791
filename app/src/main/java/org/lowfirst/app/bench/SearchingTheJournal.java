package org.lowfirst.app.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;

/** Finds entries of the journal by what they are about, who entered them and when; and checks its chain. */
public final class SearchingTheJournal {

    /** So many entries are looked at in one go; then the asker is told how to go on. */
    static final int MOST_LOOKED_AT = 20_000;

    private static final int STRETCH = 500;

    private final Recorder recorder;
    private final ReadingTheJournal reading;
    private final Wording wording;

    SearchingTheJournal(Recorder recorder, Locale locale) {
        this.recorder = recorder;
        this.reading = new ReadingTheJournal(recorder, locale);
        this.wording = Wording.of(SearchingTheJournal.class, locale);
    }

    /**
     * What was found.
     *
     * @param lines newest first
     * @param next how many of the newest to leave out to go on; 0 when everything was looked at
     */
    public record Found(List<JournalLine> lines, int next) {

        public Found {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Entries by when they happened, newest first.
     *
     * @param skip how many of the newest to leave out, wanted or not
     * @param limit at most so many lines
     * @throws NoSuchElementException when there is no such bench
     */
    public Found find(BenchId bench, JournalFilter filter, int skip, int limit) {
        List<StoredEntry> wanted = new ArrayList<>();
        int next = look(bench, filter, skip, filter.isNone() ? limit : STRETCH, stored -> {
            wanted.add(stored);
            return wanted.size() < limit;
        });
        return new Found(reading.lines(bench, wanted), next);
    }

    /**
     * Who entered how much of what, by name, among the newest 20,000 entries.
     *
     * @throws NoSuchElementException when there is no such bench
     */
    public Map<String, Map<EntryGroup, Integer>> countByPerson(BenchId bench, JournalFilter filter) {
        Map<String, Map<EntryGroup, Integer>> counts = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        look(bench, filter, 0, STRETCH, stored -> {
            Entry entry = stored.entry();
            counts.computeIfAbsent(entry.origin().author(), author -> new EnumMap<>(EntryGroup.class))
                    .merge(EntryGroup.of(entry.fact()), 1, Integer::sum);
            return true;
        });
        return counts;
    }

    /** Checks every entry and every link of the chain. */
    public Verification verify(BenchId bench) {
        return Verification.of(recorder.journal(), bench);
    }

    /** Takes an entry that is wanted; false ends the search. */
    private interface Taker {
        boolean take(StoredEntry stored);
    }

    /** @param stretch so many are read at a time */
    private int look(BenchId bench, JournalFilter filter, int skip, int stretch, Taker taker) {
        Journal journal = recorder.journal();
        FactCylinders about = filter.cylinder() == null ? null : FactCylinders.about(filter.cylinder(), journal, bench);
        int at = Math.max(0, skip);
        int end = at + MOST_LOOKED_AT;
        while (at < end) {
            List<StoredEntry> newest = journal.listNewest(bench, at, stretch);
            FactSentences sentences = sentences(bench, filter, newest);
            for (StoredEntry stored : newest) {
                at++;
                boolean wanted = wanted(stored.entry(), filter, about) && says(stored, filter, sentences);
                if (wanted && !taker.take(stored)) {
                    return at < reading.count(bench) ? at : 0;
                }
            }
            if (newest.size() < stretch) {
                return 0;
            }
        }
        return at;
    }

    private @Nullable FactSentences sentences(BenchId bench, JournalFilter filter, List<StoredEntry> stretch) {
        return filter.text().isEmpty()
                ? null
                : new FactSentences(
                        wording, recorder.getState(bench).bench(), FillBottles.of(recorder.journal(), bench, stretch));
    }

    private static boolean wanted(Entry entry, JournalFilter filter, @Nullable FactCylinders about) {
        Instant at = entry.origin().effectiveAt();
        Fact fact = entry.fact();
        return (filter.person().isEmpty() || entry.origin().author().equals(filter.person()))
                && (filter.group() == null || EntryGroup.of(fact) == filter.group())
                && (filter.from() == null || !at.isBefore(filter.from()))
                && (filter.until() == null || at.isBefore(filter.until()))
                && (about == null || about.concerns(fact));
    }

    private static boolean says(StoredEntry stored, JournalFilter filter, @Nullable FactSentences sentences) {
        if (sentences == null) {
            return true;
        }
        String sought = filter.text().toLowerCase(Locale.ROOT);
        return sentences.of(stored.entry().fact()).toLowerCase(Locale.ROOT).contains(sought)
                || stored.hash().startsWith(sought);
    }
}
