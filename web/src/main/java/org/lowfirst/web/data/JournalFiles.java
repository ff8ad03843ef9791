package org.lowfirst.web.data;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.lowfirst.app.journal.Importing;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.JournalExport;
import org.lowfirst.app.journal.JournalImport;
import org.lowfirst.station.BenchId;
import org.lowfirst.web.words.Words;

/** Journals as files of lines. */
final class JournalFiles {

    private static final int LONGEST_SHOWN = 160;

    private final Journal journal;
    private final Words words;

    JournalFiles(Journal journal, Words words) {
        this.journal = journal;
        this.words = words;
    }

    /**
     * What came of a file, told in sentences.
     *
     * @param good whether every line was good
     */
    record Told(boolean good, List<String> sentences) {

        Told {
            sentences = List.copyOf(sentences);
        }
    }

    byte[] of(BenchId bench) {
        try {
            StringWriter out = new StringWriter();
            JournalExport.write(journal, bench, out);
            return out.toString().getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param dryRun true to check everything and write nothing */
    Told read(byte[] file, boolean dryRun) {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(new ByteArrayInputStream(file), StandardCharsets.UTF_8.newDecoder()))) {
            return told(JournalImport.read(journal, lines, dryRun));
        } catch (CharacterCodingException notText) {
            return new Told(false, List.of(words.of("data.import.not-text")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Told told(Importing importing) {
        if (importing instanceof Importing.BadLine bad) {
            return new Told(
                    false,
                    List.of(
                            words.of("data.import.bad", bad.line(), bad.what()),
                            bad.text().length() > LONGEST_SHOWN
                                    ? bad.text().substring(0, LONGEST_SHOWN) + "..."
                                    : bad.text()));
        }
        List<String> sentences = new ArrayList<>();
        ((Importing.Imported) importing)
                .benches()
                .forEach(bench -> sentences.add(words.of(
                        "data.import.bench",
                        bench.bench(),
                        bench.added(),
                        bench.known(),
                        bench.head().hash())));
        return new Told(true, sentences);
    }
}
