package org.lowfirst.app.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.GasUnit;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** What is written for a spreadsheet is read back by a reader made elsewhere, and says the same. */
class MonthSheetTest {

    @Test
    void everyLineComesBackWithItsSumAndItsWords() {
        RandomBench bench = new RandomBench(11, "=Vale, \"N.\"");
        Books books = bench.books();
        List<List<String>> rows = rows(new MonthSheet(books, Locale.ENGLISH).write(RandomBench.MONTH, ""));
        List<ChargeLine> lines = books.book().lines().stream()
                .filter(line -> line.month().equals(RandomBench.MONTH))
                .toList();
        assertThat(lines).hasSizeGreaterThan(5);
        List<String> header = rows.get(0);
        assertThat(header)
                .contains("gas [standard litres at 15 C, 1.013 bar]", "amount [EUR]", "price [EUR a unit of gas]");
        assertThat(rows).hasSize(lines.size() + 1);
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < lines.size(); i++) {
            ChargeLine line = lines.get(i);
            List<String> row = rows.get(i + 1);
            assertThat(row).hasSameSizeAs(header);
            BigDecimal amount = new BigDecimal(row.get(header.indexOf("amount [EUR]")));
            assertThat(amount).isEqualTo(line.amount().amount());
            assertThat(new BigDecimal(row.get(header.indexOf("gas [standard litres at 15 C, 1.013 bar]"))))
                    .isEqualTo(line.quantity());
            String person = row.get(header.indexOf("person"));
            assertThat(person.startsWith("'") ? person.substring(1) : person)
                    .isEqualTo(line.fill().person());
            assertThat(person).doesNotStartWith("=");
            assertThat(row.get(header.indexOf("line"))).isEqualTo(line.id());
            sum = sum.add(amount);
        }
        assertThat(sum).isEqualTo(books.book().total(RandomBench.MONTH).amount());
    }

    @Test
    void onePersonsSheetHoldsThatPersonsLinesOnly() {
        RandomBench bench = new RandomBench(12, "Nora Vale");
        byte[] sheet = new MonthSheet(bench.books(), Locale.ENGLISH).write(RandomBench.MONTH, "Nora Vale");
        assertThat(rows(sheet).stream().skip(1).map(row -> row.get(1))).containsOnly("Nora Vale");
        assertThat(new String(sheet, StandardCharsets.UTF_8)).contains("\r\n").doesNotContain("\n\n");
    }

    @Test
    void eachUnitOfGasHasAColumnOfItsOwn() {
        List<String> header = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (long seed = 0; header.size() < 17; seed++) {
            Books books = new RandomBench(seed, "Nora Vale", GasUnit.STANDARD_CUBIC_FOOT).books();
            rows = rows(new MonthSheet(books, Locale.ENGLISH).write(RandomBench.MONTH, ""));
            header = rows.get(0);
        }
        int litres = header.indexOf("gas [standard litres at 15 C, 1.013 bar]");
        int feet = header.indexOf("gas [standard cubic feet at 15 C, 1.013 bar]");
        assertThat(List.of(litres, feet)).doesNotContain(-1);
        assertThat(rows.stream().skip(1))
                .allMatch(row -> row.get(litres).isEmpty() != row.get(feet).isEmpty());
    }

    private static List<List<String>> rows(byte[] sheet) {
        CsvFactory factory =
                CsvFactory.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        List<List<String>> rows = new ArrayList<>();
        try (var parser = factory.createParser(ObjectReadContext.empty(), sheet)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                List<String> cells = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    cells.add(parser.getString());
                }
                rows.add(cells);
            }
        }
        return rows;
    }
}
