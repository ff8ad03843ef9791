package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.money.Books;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Rule;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.MonthResult;
import org.lowfirst.station.charges.Statement;

/** Closing a month: what comes after it, and what the month brought. */
class MonthCloseTest {

    private static final YearMonth JUNE = ClubMonth.JUNE;

    @TempDir
    private Path directory;

    private ClubMonth club;

    @BeforeEach
    void open() {
        club = ClubMonth.at(directory);
    }

    @AfterEach
    void close() {
        club.station.close();
    }

    @Test
    void whatComesAfterTheCloseIsBookedInTheFirstOpenMonth() {
        BottleId bottle = club.bottle("M-11", "2");
        long seq = club.fill("slip", bottle, "130", "180");
        Instant inJune = club.station.clock.instant();
        assertThat(club.refused(new MoneyFact.MonthClosed(JUNE, "Ida"))).isEqualTo(Rule.MONTH_NOT_OVER);
        club.station.clock.set(Instant.parse("2026-07-02T09:00:00Z"));
        club.enter(new MoneyFact.MonthClosed(JUNE, "Ida"));
        Statement closed = club.books().book().statement("M-11", JUNE);
        club.correct(seq, "slip", bottle, "30", "180", "start was 30, not 130");
        club.fill("late", bottle, "30", "180", inJune);
        club.enter(new MoneyFact.FillBilled(new FillId("late"), "R. Vane", false));
        Books books = club.books();
        assertThat(books.book().statement("M-11", JUNE)).isEqualTo(closed);
        assertThat(books.book().closes().get(0).statements()).containsExactly(closed);
        YearMonth july = JUNE.plusMonths(1);
        assertThat(books.book().lines().stream().filter(line -> line.month().equals(july)))
                .extracting(line -> line.fill().person() + " " + line.kind() + " "
                        + line.amount().amount().toPlainString() + " " + line.late() + " "
                        + line.fill().day())
                .containsExactly(
                        "M-11 REVERSAL -1.50 true 2026-06-14",
                        "M-11 CORRECTION 3.50 true 2026-06-14",
                        "R. Vane FILL 3.50 true 2026-06-14");
        assertThat(club.refused(new MoneyFact.MonthClosed(JUNE, "Tom"))).isEqualTo(Rule.MONTH_ALREADY_CLOSED);
    }

    @Test
    void aPayerNamedAfterTheCloseIsACorrectionInTheOpenMonth() {
        BottleId bottle = club.bottle("M-11", "2");
        club.fill("own", bottle, "30", "180");
        club.station.clock.set(Instant.parse("2026-07-02T09:00:00Z"));
        club.enter(new MoneyFact.MonthClosed(JUNE, "Ida"));
        club.enter(new MoneyFact.FillBilled(new FillId("own"), "R. Vane", false));
        assertThat(club.books().book().lines())
                .extracting(line -> line.month() + " " + line.fill().person() + " " + line.kind())
                .containsExactly("2026-06 M-11 FILL", "2026-07 M-11 REVERSAL", "2026-07 R. Vane CORRECTION");
    }

    @Test
    void monthsAreClosedInOrder() {
        club.fill("one", club.bottle("M-11", "2"), "30", "180");
        club.station.clock.set(Instant.parse("2026-08-02T09:00:00Z"));
        assertThat(club.refused(new MoneyFact.MonthClosed(JUNE.plusMonths(1), "Ida")))
                .isEqualTo(Rule.EARLIER_MONTH_OPEN);
        club.enter(new MoneyFact.MonthClosed(JUNE, "Ida"));
        club.enter(new MoneyFact.MonthClosed(JUNE.plusMonths(1), "Ida"));
    }

    @Test
    void theMonthSaysWhatItBroughtAndWhatTheSupplierTook() {
        club.fourFills();
        LocalDate day = LocalDate.of(2026, 6, 14);
        club.enter(MoneyExamples.cost(CostKind.CONTENT, day, "K 1", "9.50"));
        club.enter(MoneyExamples.cost(CostKind.DELIVERY, day, null, "2.00"));
        club.enter(MoneyExamples.cost(CostKind.DEPOSIT_PAID, day, "K 1", "80.00"));
        club.enter(MoneyExamples.billed("17", "K 1", day.minusDays(2), day, 3, "0.25", "0.75"));
        MonthResult result = club.books().result(JUNE);
        assertThat(result.income()).isEqualTo(Money.of("19.74", "EUR"));
        assertThat(result.costs()).isEqualTo(Money.of("12.25", "EUR"));
        assertThat(result.result()).isEqualTo(Money.of("7.49", "EUR"));
        assertThat(result.depositsHeld()).isEqualTo(Money.of("80.00", "EUR"));
    }
}
