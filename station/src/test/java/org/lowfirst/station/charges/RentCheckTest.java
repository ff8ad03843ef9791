package org.lowfirst.station.charges;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RentCheckTest {

    private static final Currency EUR = Currency.getInstance("EUR");
    private static final LocalDate TODAY = LocalDate.of(2026, 7, 31);
    private static final RentTerms TERMS =
            new RentTerms(EUR, new BigDecimal("0.35"), RoundingRule.halfUp("0.01"), DayCount.BOTH_ENDS, 0);
    private static final List<RentStay> STAYS = List.of(
            new RentStay("S-771", june(3), june(18)),
            new RentStay("S-802", june(18), null),
            new RentStay("S-771", LocalDate.of(2026, 7, 10), null));

    private static LocalDate june(int day) {
        return LocalDate.of(2026, 6, day);
    }

    private static RentLine line(String ref, String serial, LocalDate from, LocalDate to, int days, String amount) {
        return new RentLine(ref, serial, from, to, days, new BigDecimal("0.35"), Money.of(amount, "EUR"));
    }

    private static RentFinding check(RentLine line) {
        return RentCheck.check(STAYS, TERMS, List.of(line), TODAY).get(0);
    }

    @Test
    void aLineForTheDaysTheSupplyWasHereMayBeCharged() {
        RentFinding finding = check(line("I-1/1", "S-771", june(3), june(18), 16, "5.60"));

        assertThat(finding.problems()).isEmpty();
        assertThat(finding.payableDays()).isEqualTo(16);
        assertThat(finding.overcharge()).isEqualTo(Money.of("0", "EUR"));
    }

    @Test
    void daysAfterItWentBackAreNamedOneByOne() {
        RentFinding finding = check(line("I-1/1", "S-771", june(3), june(30), 28, "9.80"));

        assertThat(finding.problems()).containsExactly(RentFinding.Problem.DAYS_NOT_HERE);
        assertThat(finding.notHere()).hasSize(12).startsWith(june(19)).endsWith(june(30));
        assertThat(finding.payable()).isEqualTo(Money.of("5.60", "EUR"));
        assertThat(finding.overcharge()).isEqualTo(Money.of("4.20", "EUR"));
    }

    @Test
    void aSerialThatWasNeverHereMayNotBeChargedAtAll() {
        RentFinding finding = check(line("I-1/2", "S-999", june(1), june(30), 30, "10.50"));

        assertThat(finding.problems()).containsExactly(RentFinding.Problem.SERIAL_NEVER_HERE);
        assertThat(finding.overcharge()).isEqualTo(Money.of("10.50", "EUR"));
    }

    @Test
    void aDayChargedTwiceIsFoundAcrossInvoices() {
        List<RentFinding> findings = RentCheck.check(
                STAYS,
                TERMS,
                List.of(
                        line("I-1/1", "S-802", june(18), june(30), 13, "4.55"),
                        line("I-2/1", "S-802", june(29), LocalDate.of(2026, 7, 31), 33, "11.55")),
                TODAY);

        assertThat(findings.get(0).problems()).isEmpty();
        assertThat(findings.get(1).problems()).containsExactly(RentFinding.Problem.CHARGED_TWICE);
        assertThat(findings.get(1).chargedBefore()).containsExactly(june(29), june(30));
        assertThat(findings.get(1).overcharge()).isEqualTo(Money.of("0.70", "EUR"));
    }

    @Test
    void wrongCountsRatesAndSumsAreTold() {
        RentLine miscounted = line("I-1/1", "S-771", june(3), june(18), 17, "5.95");
        assertThat(check(miscounted).problems()).containsExactly(RentFinding.Problem.DAYS_MISCOUNTED);
        RentLine wrongSum = line("I-1/1", "S-771", june(3), june(18), 16, "5.90");
        assertThat(check(wrongSum).problems()).containsExactly(RentFinding.Problem.WRONG_SUM);
        RentLine otherRate =
                new RentLine("I-1/1", "S-771", june(3), june(18), 16, new BigDecimal("0.40"), Money.of("6.40", "EUR"));
        assertThat(check(otherRate).problems()).containsExactly(RentFinding.Problem.OTHER_RATE);
        assertThat(check(otherRate).overcharge()).isEqualTo(Money.of("0.80", "EUR"));
    }

    @Test
    void freeDaysAndTheDayItLeavesFollowTheTerms() {
        RentTerms kind =
                new RentTerms(EUR, new BigDecimal("0.35"), RoundingRule.halfUp("0.01"), DayCount.ARRIVAL_ONLY, 10);

        assertThat(STAYS.get(0).chargeableDays(kind, TODAY))
                .containsExactly(june(13), june(14), june(15), june(16), june(17));
        assertThat(RentCheck.expected(STAYS, kind, "S-771", june(1), june(30))).isEqualTo(Money.of("1.75", "EUR"));
        assertThat(RentCheck.expected(STAYS, TERMS, "S-771", june(1), TODAY)).isEqualTo(Money.of("13.30", "EUR"));
    }

    @Test
    void aRateFinerThanTheCurrencyIsRoundedOnTheSumOnly() {
        RentTerms fine =
                new RentTerms(EUR, new BigDecimal("0.1233"), RoundingRule.halfUp("0.01"), DayCount.BOTH_ENDS, 0);

        assertThat(fine.rent(30)).isEqualTo(Money.of("3.70", "EUR"));
    }

    /** However a supplier cuts a time into lines, what may be charged is the same. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void payableDaysDoNotDependOnHowLinesAreCut(long seed) {
        Random random = new Random(seed);
        List<RentLine> lines = new ArrayList<>();
        LocalDate from = june(1);
        while (!from.isAfter(TODAY)) {
            LocalDate to = from.plusDays(random.nextInt(12));
            lines.add(line("I/" + from, "S-771", from, to, (int) (to.toEpochDay() - from.toEpochDay()) + 1, "0"));
            from = to.plusDays(1 - random.nextInt(2));
            if (to.isEqual(from)) {
                from = from.plusDays(random.nextInt(2));
            }
        }
        int payable = RentCheck.check(STAYS, TERMS, lines, TODAY).stream()
                .mapToInt(RentFinding::payableDays)
                .sum();

        assertThat(TERMS.rent(payable)).isEqualTo(RentCheck.expected(STAYS, TERMS, "S-771", june(1), TODAY));
    }
}
