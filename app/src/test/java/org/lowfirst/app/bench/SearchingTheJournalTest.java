package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.SearchingTheJournal.Found;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.SupplyId;

/** The journal of the demo bench, searched, against the same journal read from end to end. */
final class SearchingTheJournalTest {

    @TempDir
    Path directory;

    private Station station;
    private org.lowfirst.station.BenchId bench;

    @BeforeEach
    void open() {
        station = Station.at(directory, "20");
        bench = station.benches.loadingTheDemoBench().load();
    }

    @AfterEach
    void close() {
        station.close();
    }

    private SearchingTheJournal searching() {
        return station.benches.searchingTheJournal();
    }

    private List<JournalLine> all() {
        return station.benches.readingTheJournal().listLines(bench, 0, 10_000);
    }

    private List<Long> found(JournalFilter filter) {
        return searching().find(bench, filter, 0, 10_000).lines().stream()
                .map(line -> line.entry().seq())
                .toList();
    }

    private static JournalFilter about(CylinderId cylinder) {
        return new JournalFilter(null, "", cylinder, null, null, "");
    }

    @Test
    void nothingLookedForFindsTheJournalAsItIs() {
        assertThat(searching().find(bench, JournalFilter.NONE, 0, 10_000).lines())
                .isEqualTo(all());
    }

    @Test
    void goingOnFindsEveryWantedEntryOnce() {
        JournalFilter byOne = new JournalFilter(null, "Ingrid", null, null, null, "");
        List<Long> whole = found(byOne);
        List<Long> pieced = new java.util.ArrayList<>();
        int skip = 0;
        do {
            Found found = searching().find(bench, byOne, skip, 7);
            found.lines().forEach(line -> pieced.add(line.entry().seq()));
            skip = found.next();
        } while (skip > 0);
        assertThat(pieced).isEqualTo(whole).hasSizeGreaterThan(7);
        assertThat(whole)
                .isEqualTo(all().stream()
                        .filter(line -> line.entry().origin().author().equals("Ingrid"))
                        .map(line -> line.entry().seq())
                        .toList());
    }

    @Test
    void theCountsByPersonAddUpToTheWholeJournal() {
        int counted = searching().countByPerson(bench, JournalFilter.NONE).values().stream()
                .flatMap(groups -> groups.values().stream())
                .mapToInt(Integer::intValue)
                .sum();
        assertThat(counted).isEqualTo(all().size());
    }

    @Test
    void everyFillOfABottleIsFoundWithItsSteps() {
        BottleId bottle = new BottleId("demo-bottle-k1-front");
        List<String> kinds = searching().find(bench, about(bottle), 0, 10_000).lines().stream()
                .map(JournalLine::kind)
                .toList();
        assertThat(kinds).contains("bottle.registered", "fill.started", "stage.recorded", "fill.finished");
        assertThat(kinds.stream().filter("fill.started"::equals).count())
                .isEqualTo(all().stream()
                        .filter(line -> line.kind().equals("fill.started")
                                && line.sentence().contains("K1 front"))
                        .count());
    }

    @Test
    void whatASupplyGaveIsFoundForIt() {
        SupplyId supply = station.benches
                .openingABench()
                .findBench(bench)
                .orElseThrow()
                .bank()
                .get(0)
                .id();
        assertThat(searching().find(bench, about(supply), 0, 10_000).lines())
                .extracting(JournalLine::kind)
                .contains("supply.connected", "stage.recorded")
                .doesNotContain("fill.started");
    }

    @Test
    void timesBoundTheSearch() {
        var oldest = all().get(all().size() - 1).entry().origin().effectiveAt();
        JournalFilter firstHour = new JournalFilter(null, "", null, oldest, oldest.plus(Duration.ofHours(1)), "");
        assertThat(searching().find(bench, firstHour, 0, 10_000).lines())
                .isNotEmpty()
                .allMatch(line -> line.entry().origin().effectiveAt().isBefore(oldest.plus(Duration.ofHours(1))));
    }

    @Test
    void theBeginningOfAHashFindsItsEntry() {
        JournalLine line = all().get(3);
        assertThat(found(new JournalFilter(
                        null, "", null, null, null, line.hash().substring(0, 12))))
                .containsExactly(line.entry().seq());
    }

    @Test
    void theChainOfTheDemoIsWhole() {
        assertThat(searching().verify(bench)).isInstanceOf(Verification.Whole.class);
    }
}
