package org.lowfirst.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Rules of RFC 4180, section 2, numbered as there; comment lines are an addition. */
final class CsvRowsTest {

    private final Problems problems = new Problems();
    private final List<List<CsvCell>> rows = new ArrayList<>();

    @Test
    void linesEndInEitherWayAndTheLastNeedsNoEnd() {
        read("a,b\r\n1,2\n3,4");
        assertThat(texts()).containsExactly("a|b", "1|2", "3|4");
    }

    @Test
    void quotesHoldCommasLinesAndDoubledQuotes() {
        read("a,b\n\"1,5\",\"he said \"\"no\"\"\nand left\"\n7,8\n");
        assertThat(texts()).containsExactly("a|b", "1,5|he said \"no\"\nand left", "7|8");
        assertThat(rows.get(2).get(1).place()).isEqualTo(new Place(4, 3, 1));
    }

    @Test
    void spacesAroundACellDoNotCountAndThePlaceIsThatOfItsText() {
        read("a, b\n1,  250 \n");
        assertThat(rows.get(1).get(1)).isEqualTo(new CsvCell("250", new Place(2, 5, 3)));
    }

    @Test
    void commentsAndEmptyLinesAreLeftOut() {
        read("# made by hand\na,b\n\n# more\n1,2\n\n");
        assertThat(texts()).containsExactly("a|b", "1|2");
        assertThat(rows.get(1).get(0).place().line()).isEqualTo(5);
    }

    @Test
    void aQuoteInTheMiddleEndsTheReading() {
        read("a,b\n1,2\n3,\"x\"y\n5,6\n");
        assertThat(texts()).containsExactly("a|b", "1|2");
        assertThat(problems.inOrder()).singleElement().satisfies(problem -> {
            assertThat(problem.place()).isEqualTo(new Place(3, 6, 1));
            assertThat(problem.sentence()).contains("cannot be read from here on", "double quotes");
        });
    }

    @Test
    void aQuoteThatNeverEndsIsAProblem() {
        read("a,b\n1,\"2\n3,4\n");
        assertThat(problems.haveErrors()).isTrue();
    }

    @Test
    void nothingAtAllIsAProblem() {
        read("# only this\n");
        assertThat(problems.inOrder().get(0).sentence()).contains("no rows");
    }

    @Test
    void numbersAreReadAsComputersWriteThem() {
        read("T,p\n 250,1.01325E5\n-.5,+3.\n1e400,0x10\nNaN,1d\n,\"1,5\"\n");
        CsvColumns columns = new CsvColumns(rows.get(0), List.of("T", "p"), problems);
        assertThat(columns.number(rows.get(1), "p")).isEqualTo(OptionalDouble.of(101_325.0));
        assertThat(columns.number(rows.get(2), "T")).isEqualTo(OptionalDouble.of(-0.5));
        assertThat(columns.number(rows.get(2), "p")).isEqualTo(OptionalDouble.of(3.0));
        assertThat(problems.haveErrors()).isFalse();
        for (int row = 3; row < 6; row++) {
            assertThat(columns.number(rows.get(row), "T")).isEmpty();
            assertThat(columns.number(rows.get(row), "p")).isEmpty();
        }
        assertThat(problems.count()).isEqualTo(6);
    }

    @Test
    void columnsAreMissedAndDoubledInWords() {
        read("t_k,p_Pa,p_Pa\n");
        CsvColumns columns = new CsvColumns(rows.get(0), List.of("T_K", "p_Pa"), problems);
        assertThat(columns.require(List.of("T_K", "p_Pa"))).isFalse();
        assertThat(problems.inOrder().stream().map(Problem::sentence))
                .containsExactly(
                        "There is no column T_K. Maybe \"t_k\" is meant; write it as T_K.",
                        "There are two columns p_Pa. Keep the one that is right, or rename the other.");
    }

    @Test
    void aRowMustFitTheHeader() {
        read("a,b\n1\n1,2,3\n");
        CsvColumns columns = new CsvColumns(rows.get(0), List.of("a", "b"), problems);
        assertThat(columns.fits(rows.get(1))).isFalse();
        assertThat(columns.fits(rows.get(2))).isFalse();
        assertThat(problems.inOrder().get(0).sentence()).contains("1 cell,", "2 cells");
        assertThat(problems.inOrder().get(1).place()).isEqualTo(new Place(3, 5, 1));
    }

    private void read(String text) {
        CsvRows.Reader reader = new CsvRows.Reader() {
            @Override
            public boolean header(List<CsvCell> names) {
                rows.add(names);
                return true;
            }

            @Override
            public void row(List<CsvCell> cells) {
                rows.add(cells);
            }
        };
        CsvRows.read(new SourceText("x.csv", text), reader, problems);
    }

    private List<String> texts() {
        return rows.stream()
                .map(row -> row.stream().map(CsvCell::text).collect(Collectors.joining("|")))
                .toList();
    }
}
