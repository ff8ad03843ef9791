package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.SupplyId;

/** Several clients at once, also through two programs on one database. */
class ManyAtOnceTest {

    @TempDir
    private Path directory;

    private Station station;
    private Benches secondProgram;
    private SupplyId supply;
    private BottleId bottle;

    @BeforeEach
    void open() {
        station = Station.at(directory, "20");
        supply = station.supply("A", "190");
        bottle = station.bottle("M-03", "5", "40");
        if (!(Journal.open(directory.resolve("lowfirst.db")) instanceof Opening.Opened opened)) {
            throw new AssertionError("a second program cannot open the database");
        }
        secondProgram = new Benches(opened.journal(), station.clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
    }

    @AfterEach
    void close() {
        secondProgram.close();
        station.close();
    }

    @Test
    void everyEntryIsThereOnceWhoeverSentIt() throws InterruptedException, ExecutionException {
        long before = station.benches.readingTheJournal().count(Station.BENCH);
        List<Recording> recordings = atOnce(40, i -> {
            // Every key is sent twice, once through each program.
            Benches through = i % 2 == 0 ? station.benches : secondProgram;
            Submission submission = Submission.now(new EntryKey("reading-" + i / 2), "Ida");
            return through.takingReadings()
                    .take(Station.BENCH, new TakeReading(supply, station.reads("189")), submission);
        });
        assertThat(recordings).allSatisfy(recording -> assertThat(recording).isInstanceOf(Recording.Recorded.class));
        assertThat(recordings.stream().filter(recording -> ((Recording.Recorded) recording).repeat()))
                .hasSize(20);
        assertThat(station.benches.readingTheJournal().count(Station.BENCH)).isEqualTo(before + 20);
        assertThat(Verification.of(station.benches.journal(), Station.BENCH)).isInstanceOf(Verification.Whole.class);
    }

    @Test
    void ofManyFillsStartedAtOnceOneIsOpen() throws InterruptedException, ExecutionException {
        List<Recording> recordings = atOnce(8, i -> {
            Benches through = i % 2 == 0 ? station.benches : secondProgram;
            StartFill start = new StartFill(new FillId("fill-" + i), bottle, Station.bar("150"), station.reads("40"));
            return through.guidingAFill()
                    .start(Station.BENCH, start, Submission.now(new EntryKey("start-" + i), "Ida"));
        });
        assertThat(recordings.stream().filter(Recording.Recorded.class::isInstance))
                .hasSize(1);
        assertThat(recordings.stream().filter(Recording.NotRecorded.class::isInstance))
                .hasSize(7);
        assertThat(secondProgram
                        .openingABench()
                        .findBench(Station.BENCH)
                        .orElseThrow()
                        .openFills())
                .hasSize(1);
    }

    private interface Work {
        Recording run(int number);
    }

    private static List<Recording> atOnce(int times, Work work) throws InterruptedException, ExecutionException {
        ExecutorService clients = Executors.newFixedThreadPool(8);
        try {
            List<Future<Recording>> futures = new ArrayList<>();
            for (int i = 0; i < times; i++) {
                int number = i;
                futures.add(clients.submit(() -> work.run(number)));
            }
            List<Recording> recordings = new ArrayList<>();
            for (Future<Recording> future : futures) {
                recordings.add(future.get());
            }
            return recordings;
        } finally {
            clients.shutdownNow();
        }
    }
}
