package org.lowfirst.app.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;

/** Reads the journal: who, when, what. */
public final class ReadingTheJournal {

    private final Recorder recorder;
    private final Wording wording;

    ReadingTheJournal(Recorder recorder, Locale locale) {
        this.recorder = recorder;
        this.wording = Wording.of(ReadingTheJournal.class, locale);
    }

    /**
     * Entries by when they happened, newest first; a correction stands where the entry it corrects happened.
     *
     * @param skip how many of the newest to leave out
     * @param limit at most so many lines
     * @throws NoSuchElementException when there is no such bench
     */
    public List<JournalLine> listLines(BenchId bench, int skip, int limit) {
        List<StoredEntry> entries = journal().listNewest(bench, skip, limit);
        return lines(bench, entries);
    }

    /** @throws NoSuchElementException when there is no such entry */
    public JournalLine getLine(BenchId bench, long seq) {
        StoredEntry entry = journal()
                .findEntry(bench, seq)
                .orElseThrow(() -> new NoSuchElementException("There is no entry " + seq + "."));
        return lines(bench, List.of(entry)).get(0);
    }

    public long count(BenchId bench) {
        return journal().head(bench).seq();
    }

    private Journal journal() {
        return recorder.journal();
    }

    List<JournalLine> lines(BenchId bench, List<StoredEntry> entries) {
        Bench now = recorder.getState(bench).bench();
        FactSentences sentences = new FactSentences(wording, now, FillBottles.of(journal(), bench, entries));
        Corrections corrections = Corrections.of(journal().listCorrections(bench));
        return entries.stream()
                .map(stored -> new JournalLine(
                        stored.entry(),
                        stored.kind(),
                        sentences.of(stored.entry().fact()),
                        stored.hash(),
                        corrections.findCorrection(stored.entry().seq()).orElse(null),
                        now.areas().crew().signers(stored.entry().seq()),
                        note(stored.entry())))
                .toList();
    }

    /** A fill that was planned on a bank of which an earlier draw was not known yet. */
    private @Nullable String note(Entry entry) {
        String unfit = new UnfitFills(recorder, wording).note(entry);
        return unfit == null ? adviceNote(entry) : unfit;
    }

    private @Nullable String adviceNote(Entry entry) {
        if (!drawsGas(entry.fact()) && !(entry.fact() instanceof Fact.FillStarted)) {
            return null;
        }
        return journal().listLaterRecordedBefore(entry).stream()
                .filter(late -> drawsGas(counting(late.fact())))
                .findFirst()
                .map(late ->
                        wording.text("note.advised-on-later-corrected", Map.of("number", Long.toString(late.seq()))))
                .orElse(null);
    }

    private static @Nullable Fact counting(Fact fact) {
        return fact instanceof Fact.EntryCorrected correction ? correction.replacement() : fact;
    }

    private static boolean drawsGas(@Nullable Fact fact) {
        return fact instanceof Fact.FillRecorded
                || fact instanceof Fact.StageRecorded
                || fact instanceof Fact.TwoOpenedTogether;
    }
}
