package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.fitness.FitnessWord;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Roster;

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
    void theDemoHasABankADozenBottlesAndHalfAYearOfHistoryThatEndsYesterday() {
        BenchId demo = benches.loadingTheDemoBench().load();
        assertThat(benches.openingABench().listBenches())
                .singleElement()
                .satisfies(summary -> assertThat(summary.demo()).isTrue());
        assertThat(benches.keepingTheBank().bank(demo).supplies()).hasSize(5);
        assertThat(benches.registeringBottles().listBottles(demo)).hasSize(12);
        List<JournalLine> lines = benches.readingTheJournal().listLines(demo, 0, 10_000);
        assertThat(lines).hasSizeGreaterThan(700);
        Instant newest = lines.get(0).entry().origin().effectiveAt();
        Instant oldest = lines.get(lines.size() - 1).entry().origin().effectiveAt();
        assertThat(newest).isBetween(NOW.minus(Duration.ofDays(1)), NOW);
        assertThat(Duration.between(oldest, newest)).isGreaterThan(Duration.ofDays(180));
        assertThat(lines).allSatisfy(line -> assertThat(line.sentence()).endsWith("."));
        assertThat(Verification.of(benches.journal(), demo)).isInstanceOf(Verification.Whole.class);
    }

    /** One past its test, one found open, the others only to be looked at: a visitor sees a fill before a refusal. */
    @Test
    void allBottlesAreDescribedAndTwoAreRefusedOnPurpose() {
        BenchId demo = benches.loadingTheDemoBench().load();
        Map<String, FitnessWord> words = new TreeMap<>();
        benches.registeringBottles().listBottles(demo).stream()
                .filter(Bottle::inUse)
                .forEach(bottle -> words.put(
                        bottle.details().name(),
                        benches.judgingFitness().ofBottle(demo, bottle.id()).word()));
        assertThat(words.remove("Heron")).isEqualTo(FitnessWord.USE_UP);
        assertThat(words.remove("Dotterel")).isEqualTo(FitnessWord.UNFIT);
        assertThat(words).hasSize(9);
        assertThat(words.values()).containsOnly(FitnessWord.TO_LOOK_AT);
    }

    @Test
    void fivePeopleHaveRolesAndTheHistoryIsLongEnoughForAYear() {
        BenchId demo = benches.loadingTheDemoBench().load();
        Roster roster = benches.keepingPeople().roster(demo);
        assertThat(roster.names())
                .hasSize(5)
                .allSatisfy(name -> assertThat(roster.find(name))
                        .get()
                        .satisfies(person -> assertThat(person.roles()).isNotEmpty()));
        assertThat(roster.isResponsible("Wren")).isTrue();
        assertThat(roster.isResponsible("Ruben")).isFalse();
        assertThat(benches.keepingAccounts().books(demo).costs()).hasSizeGreaterThan(20);
    }

    /** The month at the end of a stamp moves with the test it stands for. */
    @Test
    void whatIsStampedAgreesWithTheTestEntered() {
        BenchId demo = benches.loadingTheDemoBench().load();
        benches.registeringBottles().listBottles(demo).forEach(bottle -> {
            Marking marking =
                    benches.keepingMarkings().findMarking(demo, bottle.id()).orElseThrow();
            assertThat(Objects.requireNonNull(marking.stamp()).line())
                    .endsWith(" "
                            + Objects.requireNonNull(marking.lastTest())
                                    .month()
                                    .toString()
                                    .replace('-', '/'));
        });
    }

    /** Its bottles are warm at the end of their fills, and no window begins or ends at a reading of every supply. */
    @Test
    void weeksAndMonthsOfFillsThatEndWarmAccuseNobody() {
        BenchId demo = benches.loadingTheDemoBench().load();
        for (int days : List.of(14, 30, 60, 90, 190)) {
            Outcome<BalanceReport> balance =
                    benches.judgingReadings().balance(demo, NOW.minus(Duration.ofDays(days)), NOW);
            assertThat(balance).isInstanceOf(Outcome.Given.class);
            BalanceReport report = ((Outcome.Given<BalanceReport>) balance).value();
            assertThat(report.balance().code())
                    .as(report.sentence())
                    .isIn(VerdictCode.INSIDE_GAUGE_UNCERTAINTY, VerdictCode.WATCH);
        }
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
        assertThat(benches.keepingTheBank().bank(demo).supplies()).hasSize(5);
    }

    /** The file is what {@link DemoStory} tells; after a change of the story the one left in target takes its place. */
    @Test
    void theFileIsTheStory() throws IOException {
        SetClock clock = new SetClock(NOW);
        try (Benches told = benches("story.db", clock)) {
            String story = String.join("\n", new DemoStory(told, clock).tell()) + "\n";
            Files.writeString(Path.of("target", "demo.jsonl"), story);
            assertThat(story.equals(file())).as("demo.jsonl is the story told").isTrue();
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
