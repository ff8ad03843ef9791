package org.lowfirst.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.LocalHelp;

/** The papers of the demo bench. */
final class PrintingPapersTest {

    private static final Clock NOW = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path directory;

    private Benches benches;
    private BenchId bench;
    private PrintingPapers printing;

    @BeforeEach
    void open() {
        if (!(Journal.open(directory.resolve("lowfirst.db")) instanceof Opening.Opened opened)) {
            throw new AssertionError("no journal in " + directory);
        }
        benches = new Benches(opened.journal(), NOW, Oxygen.schmidtWagner(), Locale.ENGLISH);
        bench = benches.loadingTheDemoBench().load();
        printing = new PrintingPapers(benches, NOW, Locale.ENGLISH);
    }

    @AfterEach
    void close() {
        benches.close();
    }

    private List<JournalLine> lines() {
        return benches.readingTheJournal().listLines(bench, 0, 1_000);
    }

    private JournalLine last(Class<? extends Fact> kind) {
        return lines().stream()
                .filter(line -> kind.isInstance(line.entry().fact()))
                .findFirst()
                .orElseThrow();
    }

    private static String text(PrintedPaper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(paper.pdf())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aFillRecordGathersTheEntriesOfItsFillFromAnyOfThem() throws IOException {
        JournalLine finished = last(Fact.FillFinished.class);
        String text = text(printing.findFillRecord(bench, finished.entry().seq(), PaperSize.A4)
                .orElseThrow());
        Fact.FillFinished fact = (Fact.FillFinished) finished.entry().fact();
        for (JournalLine line : lines()) {
            boolean ofIt = line.entry().fact() instanceof Fact.StageRecorded stage
                    && stage.fill().equals(fact.fill());
            if (ofIt) {
                assertThat(text).contains(Lettering.grouped(line.hash()).substring(0, 17));
            }
        }
        assertThat(text).contains("finished", Long.toString(finished.entry().seq()));
    }

    @Test
    void aFillThatWasTakenBackHasNoRecord() {
        long started = last(Fact.FillRecorded.class).entry().seq();
        benches.correctingAnEntry()
                .reverse(bench, started, "never happened", Submission.now(new EntryKey("k1"), "Iris Holm"));
        assertThat(printing.findFillRecord(bench, started, PaperSize.A4)).isEmpty();
    }

    @Test
    void anEntryThatIsNoFillHasNoRecordAndAnUnknownOneIsAnError() {
        assertThat(printing.findFillRecord(bench, 1, PaperSize.A4)).isEmpty();
        assertThatThrownBy(() -> printing.findFillRecord(bench, 99_999, PaperSize.A4))
                .isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void theBenchSheetPlansEveryBottleThatWasRead() throws IOException {
        String text = text(printing.benchSheet(bench, PaperSize.A4));
        benches.registeringBottles().listBottles(bench).stream()
                .filter(bottle -> bottle.inUse())
                .forEach(bottle -> assertThat(text).contains(bottle.details().name()));
        assertThat(text).contains(", settled");
    }

    @Test
    void theLabelsAndTheLogNameEverySupplyOfTheBank() throws IOException {
        String labels = text(printing.supplyLabels(bench, PaperSize.LETTER));
        String log = text(printing.blankLog(bench, PaperSize.LETTER));
        benches.keepingTheBank().bank(bench).supplies().forEach(view -> {
            assertThat(labels).contains(view.supply().details().name(), "Rank " + view.rank() + " of");
            assertThat(log).contains("Supply " + view.supply().details().name());
        });
    }

    @Test
    void theEmergencyCardCarriesTheNumbersThatWereEntered() throws IOException {
        benches.keepingLocalHelp()
                .set(
                        bench,
                        new LocalHelp("Hangar 2", "Gate", List.of(new LocalHelp.Contact("Fire", "00 00"))),
                        Submission.now(new EntryKey("k2"), "Iris Holm"));
        assertThat(text(printing.emergencyCard(bench, PaperSize.A4))).contains("Hangar 2", "Gate", "Fire", "00 00");
    }
}
