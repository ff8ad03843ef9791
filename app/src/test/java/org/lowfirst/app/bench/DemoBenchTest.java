package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.BenchId;

class DemoBenchTest {

    private static final Instant NOW = Instant.parse("2031-03-09T15:30:00Z");

    @TempDir
    private Path directory;

    private Benches benches;

    @BeforeEach
    void open() {
        benches = benches("lowfirst.db", new SetClock(NOW));
    }

    @AfterEach
    void close() {
        benches.close();
    }

    @Test
    void nothingIsLoadedUntilSomebodyAsks() {
        assertThat(benches.openingABench().listBenches()).isEmpty();
    }

    @Test
    void theDemoHasABankADozenBottlesAndWeeksOfHistoryThatEndYesterday() {
        BenchId demo = benches.loadingTheDemoBench().load();
        assertThat(benches.openingABench().listBenches())
                .singleElement()
                .satisfies(summary -> assertThat(summary.demo()).isTrue());
        assertThat(benches.keepingTheBank().bank(demo).supplies()).hasSize(4);
        assertThat(benches.registeringBottles().listBottles(demo)).hasSize(12);
        List<JournalLine> lines = benches.readingTheJournal().listLines(demo, 0, 1000);
        assertThat(lines).hasSizeGreaterThan(80);
        Instant newest = lines.get(0).entry().origin().effectiveAt();
        Instant oldest = lines.get(lines.size() - 1).entry().origin().effectiveAt();
        assertThat(newest).isBetween(NOW.minus(Duration.ofDays(4)), NOW);
        assertThat(Duration.between(oldest, newest)).isGreaterThan(Duration.ofDays(20));
        assertThat(lines).allSatisfy(line -> assertThat(line.sentence()).endsWith("."));
        assertThat(Verification.of(benches.journal(), demo)).isInstanceOf(Verification.Whole.class);
    }

    /** Its bottles end their fills settled, which the bench takes to be warm gas at every one of them: no reason to accuse. */
    @Test
    void weeksOfFillsThatAllEndWarmOrAllEndSettledAccuseNobody() {
        BenchId demo = benches.loadingTheDemoBench().load();
        Outcome<BalanceReport> balance = benches.judgingReadings().balance(demo, NOW.minus(Duration.ofDays(60)), NOW);
        assertThat(balance).isInstanceOf(Outcome.Given.class);
        VerdictCode code =
                ((Outcome.Given<BalanceReport>) balance).value().balance().code();
        assertThat(code).isIn(VerdictCode.INSIDE_GAUGE_UNCERTAINTY, VerdictCode.WATCH);
    }

    @Test
    void loadingTwiceIsLoadingOnce() {
        BenchId demo = benches.loadingTheDemoBench().load();
        long entries = benches.readingTheJournal().count(demo);
        assertThat(benches.loadingTheDemoBench().load()).isEqualTo(demo);
        assertThat(benches.readingTheJournal().count(demo)).isEqualTo(entries);
    }

    @Test
    void theDemoGoesInOneStepAndCanComeBack() {
        BenchId demo = benches.loadingTheDemoBench().load();
        assertThat(benches.openingABench().findBench(demo)).isPresent();
        assertThat(benches.removingTheDemo().remove()).isTrue();
        assertThat(benches.openingABench().listBenches()).isEmpty();
        assertThat(benches.openingABench().findBench(demo)).isEmpty();
        assertThat(benches.removingTheDemo().remove()).isFalse();
        benches.loadingTheDemoBench().load();
        assertThat(benches.keepingTheBank().bank(demo).supplies()).hasSize(4);
    }

    /** The file is what {@link DemoStory} tells; after a change of the story it is written anew from there. */
    @Test
    void theFileIsTheStory() throws IOException {
        SetClock clock = new SetClock(NOW);
        try (Benches told = benches("story.db", clock)) {
            assertThat(String.join("\n", new DemoStory(told, clock).tell()) + "\n")
                    .isEqualTo(file());
        }
    }

    private static String file() throws IOException {
        try (InputStream in = LoadingTheDemoBench.class.getResourceAsStream("demo.jsonl")) {
            return new String(Objects.requireNonNull(in, "demo.jsonl").readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Benches benches(String database, SetClock clock) {
        if (!(Journal.open(directory.resolve(database)) instanceof Opening.Opened opened)) {
            throw new AssertionError("the database does not open");
        }
        return new Benches(opened.journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
    }
}
