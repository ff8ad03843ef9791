package org.lowfirst.app.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.station.charges.ChargeBook;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.MonthClose;
import org.lowfirst.station.charges.Statement;

/** What must hold of the accounts of any bench, over a thousand seeded random ones. */
class BooksConsistencyTest {

    static LongStream seeds() {
        return LongStream.range(0, 1000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void linesAddUpExactlyHoweverTheyAreGrouped(long seed) {
        ChargeBook book = new RandomBench(seed, "Nora Vale").books().book();
        Money all = Money.sum(book.lines().stream().map(ChargeLine::amount).toList(), book.currency());
        List<Money> byMonth = book.lines().stream()
                .map(ChargeLine::month)
                .distinct()
                .map(book::total)
                .toList();
        List<Money> byPerson = book.lines().stream()
                .map(ChargeLine::month)
                .distinct()
                .flatMap(month -> book.listStatements(month).stream().map(Statement::total))
                .toList();
        assertThat(Money.sum(byMonth, book.currency())).isEqualTo(all);
        assertThat(Money.sum(byPerson, book.currency())).isEqualTo(all);
        assertThat(Money.sum(standing(book), book.currency())).isEqualTo(all);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyLineIsWorkedOutAsItsTariffSays(long seed) {
        Books books = new RandomBench(seed, "Nora Vale").books();
        for (ChargeLine line : books.book().lines()) {
            Money charge = books.working(line.id()).charge(line).amount();
            boolean reversal = line.kind() == ChargeLine.Kind.REVERSAL;
            assertThat(line.amount()).isEqualTo(reversal ? charge.negated() : charge);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void linesAreOnlyEverAddedAndAClosedMonthStaysAsItWas(long seed) {
        RandomBench bench = new RandomBench(seed, "Nora Vale");
        ChargeBook end = bench.books().book();
        for (MonthClose close : end.closes()) {
            assertThat(end.listStatements(close.month())).isEqualTo(close.statements());
        }
        int half = bench.entries().size() / 2;
        ChargeBook earlier = bench.books(half).book();
        for (MonthClose close : earlier.closes()) {
            assertThat(end.listStatements(close.month()))
                    .extracting(Statement::total)
                    .isEqualTo(close.statements().stream().map(Statement::total).toList());
        }
    }

    @Test
    void theRandomBenchesHoldEveryKindOfLineAndLateOnes() {
        List<ChargeLine> lines = seeds().boxed()
                .flatMap(seed -> new RandomBench(seed, "Nora Vale").books().book().lines().stream())
                .toList();
        assertThat(lines).extracting(ChargeLine::kind).contains(ChargeLine.Kind.values());
        assertThat(lines).anyMatch(ChargeLine::late);
        assertThat(lines).anyMatch(line -> line.fill().guest());
    }

    /** The one line that counts for each fill. */
    private static List<Money> standing(ChargeBook book) {
        Map<String, ChargeLine> last = new HashMap<>();
        book.lines().forEach(line -> last.put(line.fill().fill(), line));
        return last.values().stream()
                .filter(line -> line.kind() != ChargeLine.Kind.REVERSAL)
                .map(ChargeLine::amount)
                .toList();
    }
}
