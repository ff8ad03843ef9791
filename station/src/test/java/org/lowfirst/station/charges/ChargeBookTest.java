package org.lowfirst.station.charges;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.ReferenceCondition;

class ChargeBookTest {

    private static final Currency EUR = Currency.getInstance("EUR");
    private static final YearMonth MAY = YearMonth.of(2026, 5);
    private static final YearMonth JUNE = YearMonth.of(2026, 6);
    private static final Tariff TARIFF = tariff("0.011", "0.01");

    private static Tariff tariff(String perLitre, String step) {
        return new Tariff(
                EUR,
                GasUnit.STANDARD_LITRE,
                ReferenceCondition.ISO_15C_1ATM,
                new Prices(new BigDecimal(perLitre), BigDecimal.ZERO, new BigDecimal("1.50"), new BigDecimal("20")),
                RoundingRule.halfUp(step),
                1);
    }

    private static ChargedFill fill(String id, LocalDate day, String person, String litres) {
        return new ChargedFill(id, day, person, false, "B-1", new BigDecimal(litres));
    }

    private static ChargeBook booked(Booking booking) {
        assertThat(booking).isInstanceOf(Booking.Booked.class);
        return ((Booking.Booked) booking).book();
    }

    private static Booking.Problem problem(Booking booking) {
        assertThat(booking).isInstanceOf(Booking.NotBooked.class);
        return ((Booking.NotBooked) booking).problem();
    }

    @Test
    void aFillIsChargedOnce() {
        ChargeBook book = booked(ChargeBook.empty(EUR).charge(fill("F-1", MAY.atDay(3), "P. Holm", "400"), TARIFF));

        assertThat(problem(book.charge(fill("F-1", MAY.atDay(3), "P. Holm", "400"), TARIFF)))
                .isEqualTo(Booking.Problem.ALREADY_CHARGED);
    }

    @Test
    void aCorrectionToAnotherPersonShowsOnBothStatements() {
        ChargeBook book = booked(ChargeBook.empty(EUR).charge(fill("F-1", MAY.atDay(3), "P. Holm", "400"), TARIFF));
        book = booked(book.correct(fill("F-1", MAY.atDay(3), "K. Birch", "400"), TARIFF, "was K. Birch's bottle"));

        assertThat(book.statement("P. Holm", MAY).total()).isEqualTo(Money.of("0.00", "EUR"));
        assertThat(book.statement("P. Holm", MAY).lines()).hasSize(2);
        assertThat(book.statement("K. Birch", MAY).total()).isEqualTo(Money.of("4.40", "EUR"));
    }

    @Test
    void afterAMonthIsClosedItsStatementsStayAndCorrectionsGoToTheNextWithTheirOwnDay() {
        ChargeBook book = booked(ChargeBook.empty(EUR).charge(fill("F-1", MAY.atDay(30), "P. Holm", "400"), TARIFF));
        book = booked(book.close(MAY, JUNE.atDay(1), "T. Reed"));
        MonthClose closed = book.closes().get(0);
        book = booked(book.correct(fill("F-1", MAY.atDay(30), "P. Holm", "500"), TARIFF, "read again"));
        book = booked(book.charge(fill("F-2", MAY.atDay(31), "P. Holm", "200"), TARIFF));

        assertThat(closed.total()).isEqualTo(Money.of("4.40", "EUR"));
        assertThat(book.statement("P. Holm", MAY)).isEqualTo(closed.statements().get(0));
        Statement june = book.statement("P. Holm", JUNE);
        assertThat(june.lines()).hasSize(3).allMatch(ChargeLine::late);
        assertThat(june.total()).isEqualTo(Money.of("3.30", "EUR"));
        assertThat(june.quantity()).isEqualByComparingTo("300");
    }

    @Test
    void monthsAreClosedInOrderAndOnlyWhenOver() {
        ChargeBook book = booked(ChargeBook.empty(EUR).charge(fill("F-1", MAY.atDay(30), "P. Holm", "400"), TARIFF));

        assertThat(problem(book.close(MAY, MAY.atEndOfMonth(), "T. Reed"))).isEqualTo(Booking.Problem.MONTH_NOT_OVER);
        assertThat(problem(book.close(JUNE, LocalDate.of(2026, 7, 1), "T. Reed")))
                .isEqualTo(Booking.Problem.EARLIER_MONTH_OPEN);
        ChargeBook closed = booked(book.close(MAY, JUNE.atDay(1), "T. Reed"));
        assertThat(problem(closed.close(MAY, JUNE.atDay(2), "T. Reed")))
                .isEqualTo(Booking.Problem.MONTH_ALREADY_CLOSED);
    }

    @Test
    void whatWasNeverChargedIsNotCorrectedAndACorrectionNeedsAReason() {
        ChargeBook book = booked(ChargeBook.empty(EUR).charge(fill("F-1", MAY.atDay(3), "P. Holm", "400"), TARIFF));

        assertThat(problem(book.reverse("F-9", "slip"))).isEqualTo(Booking.Problem.NEVER_CHARGED);
        assertThat(problem(book.reverse("F-1", " "))).isEqualTo(Booking.Problem.REASON_EMPTY);
        ChargeBook reversed = booked(book.reverse("F-1", "never happened"));
        assertThat(problem(reversed.reverse("F-1", "again"))).isEqualTo(Booking.Problem.NEVER_CHARGED);
        ChargeBook again = booked(reversed.correct(fill("F-1", MAY.atDay(3), "P. Holm", "300"), TARIFF, "it did"));
        assertThat(again.statement("P. Holm", MAY).total()).isEqualTo(Money.of("3.30", "EUR"));
        assertThat(again.lines()).extracting(ChargeLine::id).containsExactly("F-1.1", "F-1.2", "F-1.3");
    }

    @Test
    void aTariffInAnotherCurrencyIsNotBooked() {
        assertThat(problem(ChargeBook.empty(Currency.getInstance("USD"))
                        .charge(fill("F-1", MAY.atDay(3), "P. Holm", "400"), TARIFF)))
                .isEqualTo(Booking.Problem.OTHER_CURRENCY);
    }

    /** Whatever is booked, in whatever order: statements add up to the total exactly, and only what stands is owed. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void linesAlwaysAddUpExactly(long seed) {
        Random random = new Random(seed);
        ChargeBook book = ChargeBook.empty(EUR);
        Map<YearMonth, MonthClose> closed = new HashMap<>();
        for (int step = 0; step < 120; step++) {
            Tariff tariff = random.nextBoolean() ? TARIFF : tariff("0.0137", "0.05");
            ChargedFill fill = new ChargedFill(
                    "F-" + random.nextInt(40),
                    LocalDate.of(2026, 1 + random.nextInt(6), 1 + random.nextInt(28)),
                    "P" + random.nextInt(5),
                    random.nextBoolean(),
                    "B",
                    BigDecimal.valueOf(random.nextInt(90_000), 2));
            Booking booking = switch (random.nextInt(8)) {
                case 0, 1 -> book.correct(fill, tariff, "slip");
                case 2 -> book.reverse(fill.fill(), "slip");
                case 3 -> book.close(YearMonth.of(2026, 1 + step / 24), LocalDate.of(2026, 8, 1), "T. Reed");
                default -> book.charge(fill, tariff);
            };
            if (booking instanceof Booking.Booked done) {
                book = done.book();
            }
            book.closes().forEach(close -> closed.putIfAbsent(close.month(), close));
        }

        assertThat(book.lines()).isNotEmpty();
        Money owed = Money.zero(EUR);
        for (String fill : new TreeSet<>(
                book.lines().stream().map(line -> line.fill().fill()).toList())) {
            owed = owed.plus(book.findStanding(fill).map(ChargeLine::amount).orElse(Money.zero(EUR)));
        }
        List<Money> statements = new ArrayList<>();
        for (YearMonth month = YearMonth.of(2026, 1); month.getYear() == 2026; month = month.plusMonths(1)) {
            List<Money> ofMonth =
                    book.listStatements(month).stream().map(Statement::total).toList();
            assertThat(Money.sum(ofMonth, EUR)).isEqualTo(book.total(month));
            statements.addAll(ofMonth);
        }
        assertThat(Money.sum(statements, EUR)).isEqualTo(owed);
        for (MonthClose close : closed.values()) {
            assertThat(book.listStatements(close.month())).isEqualTo(close.statements());
        }
    }
}
