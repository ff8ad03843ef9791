package org.lowfirst.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Recording.Recorded;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedPressure;

/** Bottles brought from spreadsheets and taken back to them. */
final class BottleTableTest {

    /** A name that a spreadsheet takes for a formula, quotes, commas, another unit, digits with zeros, a retired bottle. */
    private static final String ODD = String.join(
            "\r\n",
            "id,name,owner,water volume [L],volume known by,volume source,service pressure [bar],material,usual target [bar],retired",
            "m-3,'=M-03,\"Vale, Nora\",5.0,stamped,,200,steel,150,",
            "m-4,\"M \"\"four\"\"\",'-Tom,4.6,nameplate,\"24 cu ft at 2,015 psi\",3000 psi,aluminium,,",
            "m-5,'+5,,10,catalogue,10 L,300,,,yes",
            "");

    @TempDir
    Path directory;

    private TableBench bench;

    @BeforeEach
    void open() {
        bench = TableBench.at(directory.resolve("one.db"));
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private BottleDetails details(String name) {
        return bench.bench().listBottles().stream()
                .map(Bottle::details)
                .filter(details -> details.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsExportedAndImportedElsewhereIsExportedTheSameByteByByte() {
        assertThat(bench.entered(ODD)).isInstanceOf(Recorded.class);
        String first = bench.csv(TableKind.BOTTLES);
        try (TableBench other = TableBench.at(directory.resolve("two.db"))) {
            assertThat(other.entered(first)).isInstanceOf(Recorded.class);
            assertThat(other.csv(TableKind.BOTTLES)).isEqualTo(first);
            assertThat(other.bench().bottles().keySet())
                    .isEqualTo(bench.bench().bottles().keySet());
        }
        assertThat(first).isEqualTo(ODD);
    }

    @Test
    void importingWhatIsThereAlreadyEntersNothing() {
        bench.entered(ODD);
        long before = bench.benches.readingTheJournal().count(TableBench.BENCH);
        assertThat(bench.entered(bench.csv(TableKind.BOTTLES)))
                .isInstanceOfSatisfying(
                        Recorded.class,
                        recorded -> assertThat(recorded.entries()).isEmpty());
        assertThat(bench.benches.readingTheJournal().count(TableBench.BENCH)).isEqualTo(before);
    }

    @Test
    void aKnownIdChangesThatBottle() {
        bench.entered(ODD);
        bench.entered("id,name,owner,volume,marked\nm-3,M-03b,Nora,5,200 bar\n");
        assertThat(details("M-03b").owner()).isEqualTo("Nora");
        assertThat(bench.bench().listBottles()).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Name\tOwner\tVolume\tMarked\nM-03\tNora\t5\t200\n",
                "Flasche;Besitzer;Rauminhalt (L);Fülldruck (bar)\nM-03;Nora;5,0;200\n",
                "BOTTLE, Belongs to, Water capacity L, Working pressure bar\nM-03, Nora, 5, 200\n",
                "\uFEFFname,owner,size,wp\n\nM-03,Nora,5 L,200 bar\n\n",
                "Nr.;Eigentümer;Volumen;Betriebsdruck\r\nM-03;Nora;5;200\r\n"
            })
    void theSameBottleIsReadFromTablesOfAllSorts(String text) {
        assertThat(bench.entered(text)).isInstanceOf(Recorded.class);
        BottleDetails bottle = details("M-03");
        assertThat(bottle.owner()).isEqualTo("Nora");
        assertThat(bottle.waterVolume().stated().volume().toLitres()).isEqualTo(5.0);
        assertThat(bottle.servicePressure().compareTo(StatedPressure.of("200", PressureUnit.BAR)))
                .isZero();
    }

    @Test
    void theUnitOfTheHeadingHoldsForCellsWithoutOne() {
        bench.entered("name;volume (L);service pressure [psi]\nM-03;5;3000\nM-04;5;200 bar\n");
        assertThat(details("M-03").servicePressure()).isEqualTo(StatedPressure.of("3000", PressureUnit.PSI));
        assertThat(details("M-04").servicePressure()).isEqualTo(StatedPressure.of("200", PressureUnit.BAR));
    }

    @Test
    void everyRowSaysWhatIsWrongWithItAndTheOthersAreSound() {
        List<JudgedRow> rows = bench.judged(
                "name,volume,marked,usual,material\nM-03,5,200,,\n,5,200,,\nM-05,five,200,,wood\nM-06,5,,150 bar abs,\n");
        assertThat(rows.get(0).sound()).isTrue();
        assertThat(rows.get(1).faults()).containsOnlyKeys(BottleColumn.NAME);
        assertThat(rows.get(2).faults()).containsOnlyKeys(BottleColumn.VOLUME, BottleColumn.MATERIAL);
        assertThat(rows.get(2).faults().get(BottleColumn.MATERIAL))
                .isEqualTo("wood is none of aluminium, steel, composite.");
        assertThat(rows.get(3).faults()).containsOnlyKeys(BottleColumn.MARKED, BottleColumn.USUAL);
    }

    @Test
    void rowsAreCheckedOnWhatTheRowsBeforeLeave() {
        String twice = "name,volume,marked\nM-03,5,200\nm-03,5,200\nM-04,5,200\n";
        assertThat(bench.checked(twice).stream()
                        .map(refused -> refused.map(Refused::rule).orElse(null)))
                .containsExactly(null, Rule.NAME_TAKEN, null);
        assertThat(bench.entered(twice))
                .isInstanceOfSatisfying(
                        Recording.NotRecorded.class,
                        not -> assertThat(not.refused().rule()).isEqualTo(Rule.NAME_TAKEN));
        assertThat(bench.bench().listBottles()).isEmpty();
    }

    @Test
    void whatCannotBeReadIsRefusedWithWhatToDo() {
        ReadingPastedBottles reading = new ReadingPastedBottles(java.util.Locale.ENGLISH);
        assertThat(((Pasted.Unreadable) reading.read(" \n")).why()).startsWith("Nothing was pasted.");
        assertThat(((Pasted.Unreadable) reading.read("colour,weight\nred,3\n")).why())
                .contains("none of them is called name or bottle", "colour, weight");
        assertThat(((Pasted.Unreadable) reading.read("name,volume\n")).why()).startsWith("Below the headings");
        assertThat(((Pasted.Unreadable) reading.read("name,bottle\nA,B\n")).why())
                .contains("name and bottle");
        assertThat(((Pasted.Unreadable) reading.read("name,volume\n\"M-03,5\n")).why())
                .startsWith("Row 2 ");
        assertThat(((Pasted.Unreadable) reading.read("name\n" + "x\n".repeat(501))).why())
                .contains("501", "500");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void everyHeadingThatIsWrittenIsRecognisedAgain(String language) {
        List<String> headings = new Headings(
                        java.util.Locale.forLanguageTag(language),
                        bench.bench().settings().units())
                .of(TableKind.BOTTLES);
        assertThat(headings)
                .allSatisfy(heading -> assertThat(KnownHeadings.find(heading)).isPresent());
        assertThat(headings.stream()
                        .map(heading ->
                                KnownHeadings.find(heading).orElseThrow().column()))
                .containsExactly(
                        BottleColumn.ID,
                        BottleColumn.NAME,
                        BottleColumn.OWNER,
                        BottleColumn.VOLUME,
                        BottleColumn.KNOWN_BY,
                        BottleColumn.SOURCE,
                        BottleColumn.MARKED,
                        BottleColumn.MATERIAL,
                        BottleColumn.USUAL,
                        BottleColumn.RETIRED);
    }

    @Test
    void headingsThatAreNotKnownAreNamed() {
        Pasted.Table table = (Pasted.Table) new ReadingPastedBottles(java.util.Locale.ENGLISH)
                .read("name,volume,marked,colour\nM-03,5,200,white\n");
        assertThat(table.leftOut()).containsExactly("colour");
    }

    @Test
    void everyTableHasAsManyCellsInEachRowAsHeadings() throws CsvText.Unreadable {
        bench.close();
        bench = TableBench.at(directory.resolve("demo.db"));
        var demo = bench.benches.loadingTheDemoBench().load();
        for (TableKind kind : TableKind.values()) {
            String csv = new ExportingTables(bench.benches, java.util.Locale.ENGLISH).csv(demo, kind);
            List<List<String>> rows = CsvText.read(csv, ',');
            assertThat(csv).as(kind.key()).endsWith("\r\n");
            assertThat(rows)
                    .as(kind.key())
                    .hasSizeGreaterThan(1)
                    .allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
        }
    }
}
