package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.money.Books;
import org.lowfirst.app.money.Uncharged;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.AmendBottle;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Stage;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.Statement;

/**
 * A month end at an invented club, through the journal. The money and the litres it is held against were worked out outside the
 * project, with another program's real gas (CoolProp 8.0.0) at 15 C and 1.01325 bar: four fills at 17 C, 0.011 a standard litre,
 * at least 1.50, guests 20 % more, each rounded half-up to the cent.
 */
class MonthEndTest {

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
    void fourFillsAreChargedToTheCentByTheToolsOwnLitres() {
        club.fourFills();
        Books books = club.books();
        assertThat(books.book().lines())
                .extracting(line ->
                        line.fill().person() + " " + line.amount().amount().toPlainString())
                .containsExactly("M-03 5.19", "M-11 3.50", "M-19 1.95", "V-02 9.10");
        assertThat(books.book().total(JUNE)).isEqualTo(Money.of("19.74", "EUR"));
        List<Double> litres = books.book().lines().stream()
                .map(line -> line.quantity().doubleValue())
                .toList();
        double[] expected = {472, 318, 178, 689};
        for (int i = 0; i < expected.length; i++) {
            assertThat(litres.get(i)).isCloseTo(expected[i], within(0.015 * expected[i]));
        }
        assertThat(litres.stream().mapToDouble(one -> one).sum()).isCloseTo(1657, within(0.015 * 1657));
        List<Double> bank = club.station.bank();
        assertThat(bank.get(0)).isCloseTo(63.5, offset(1.0));
        assertThat(bank.get(1)).isCloseTo(114.1, offset(1.0));
        assertThat(bank.get(2)).isCloseTo(182.9, offset(1.0));
    }

    @Test
    void whatTheGaugesMissIsInsideTheirUncertaintyAndNotCharged() {
        club.fourFills();
        club.station.clock.forward(Duration.ofHours(2));
        club.read("A", "63");
        club.read("B", "113");
        club.read("C", "181");
        Outcome<BalanceReport> outcome = club.station.benches.keepingAccounts().balance(Station.BENCH, JUNE);
        assertThat(outcome).isInstanceOf(Outcome.Given.class);
        BalanceReport report = ((Outcome.Given<BalanceReport>) outcome).value();
        assertThat(report.name()).isEqualTo("inside gauge uncertainty");
        assertThat(report.leftOut()).isEmpty();
        double left = ClubMonth.litres(report.balance().left_mol());
        double billed = club.books().book().lines().stream()
                .mapToDouble(line -> line.quantity().doubleValue())
                .sum();
        assertThat(left).isCloseTo(1845, within(0.015 * 1845));
        assertThat(left - billed).isCloseTo(188, within(0.015 * 1845));
        assertThat(ClubMonth.litres(report.balance().supplies().get(0).limit_mol()))
                .isBetween(200.0, 330.0);
        assertThat(club.books().book().total(JUNE)).isEqualTo(Money.of("19.74", "EUR"));
    }

    @Test
    void aTypingSlipIsTakenBackAndChargedAnewInThreeVisibleLines() {
        BottleId bottle = club.bottle("M-11", "2");
        long seq = club.fill("slip", bottle, "130", "180");
        assertThat(club.books().book().lines().get(0).quantity().doubleValue()).isCloseTo(106, within(1.6));
        club.correct(seq, "slip", bottle, "30", "180", "start was 30, not 130");
        Statement statement = club.books().book().statement("M-11", JUNE);
        assertThat(statement.lines())
                .extracting(line -> line.kind() + " " + line.amount().amount().toPlainString() + " " + line.reason())
                .containsExactly(
                        "FILL 1.50 ", "REVERSAL -1.50 start was 30, not 130", "CORRECTION 3.50 start was 30, not 130");
        assertThat(statement.total()).isEqualTo(Money.of("3.50", "EUR"));
        assertThat(club.books().working("slip.2").entry()).isEqualTo(seq + 1);
    }

    @Test
    void aCorrectionThatChangesNoChargeAddsNoLine() {
        BottleId bottle = club.bottle("M-11", "2");
        long seq = club.fill("same", bottle, "30", "180");
        club.correct(seq, "same", bottle, "30.0", "180", "digit");
        assertThat(club.books().book().lines()).hasSize(1);
    }

    @Test
    void aFillTakenBackLeavesItsReversal() {
        BottleId bottle = club.bottle("M-11", "2");
        long seq = club.fill("gone", bottle, "30", "180");
        club.station.recorded(club.station
                .benches
                .correctingAnEntry()
                .reverse(Station.BENCH, seq, "never happened", club.station.submission()));
        Books books = club.books();
        assertThat(books.book().lines())
                .extracting(ChargeLine::kind)
                .containsExactly(ChargeLine.Kind.FILL, ChargeLine.Kind.REVERSAL);
        assertThat(books.book().total(JUNE).isZero()).isTrue();
        assertThat(books.findUncharged(new FillId("gone")).orElseThrow().why()).isEqualTo(Uncharged.Why.TAKEN_BACK);
    }

    @Test
    void theOwnerPaysUnlessItWasBilledToSomebodyElse() {
        BottleId bottle = club.bottle("M-11", "2");
        club.fill("own", bottle, "30", "180");
        club.fill("guest", bottle, "30", "180");
        club.enter(new MoneyFact.FillBilled(new FillId("guest"), "R. Vane", true));
        assertThat(club.books().book().lines())
                .extracting(line -> line.fill().person() + " " + line.fill().guest() + " "
                        + line.amount().amount().toPlainString())
                .containsExactly("M-11 false 3.50", "R. Vane true 4.20");
        club.enter(new MoneyFact.FillBilled(new FillId("guest"), "S. Orme", false));
        assertThat(club.books().book().lines())
                .extracting(line ->
                        line.fill().person() + " " + line.amount().amount().toPlainString())
                .containsExactly("M-11 3.50", "R. Vane 4.20", "R. Vane -4.20", "S. Orme 3.50");
    }

    @Test
    void anotherOwnerLaterDoesNotChangeWhoPaid() {
        BottleId bottle = club.bottle("M-11", "2");
        club.fill("own", bottle, "30", "180");
        club.station.clock.forward(Duration.ofHours(1));
        BottleDetails sold = new BottleDetails("M-11", "T. Lark", Station.litres("2"), Station.bar("200"), null, null);
        club.station.recorded(club.station
                .benches
                .registeringBottles()
                .amend(Station.BENCH, new AmendBottle(bottle, sold), club.station.submission()));
        assertThat(club.books().book().lines())
                .extracting(line -> line.fill().person())
                .containsExactly("M-11");
    }

    @Test
    void aBrokenOffFillIsChargedForWhatWentIn() {
        BottleId bottle = club.bottle("M-03", "5");
        club.station.markAndLookAt(bottle);
        FillId fill = new FillId("broken");
        club.station.recorded(club.station
                .benches
                .guidingAFill()
                .start(
                        Station.BENCH,
                        new StartFill(fill, bottle, Station.bar("150"), club.station.reads("40")),
                        club.station.submission()));
        assertThat(club.books().findUncharged(fill).orElseThrow().why()).isEqualTo(Uncharged.Why.UNDER_WAY);
        club.station.recorded(club.station
                .benches
                .guidingAFill()
                .recordStage(
                        Station.BENCH,
                        new RecordStage(
                                fill, new Stage(new SupplyId("supply-A"), club.station.reads("66"), null, null)),
                        club.station.submission()));
        club.station.recorded(club.station
                .benches
                .guidingAFill()
                .abandon(Station.BENCH, new AbandonFill(fill, "called away"), club.station.submission()));
        ChargeLine line = club.books().findLine(fill).orElseThrow();
        assertThat(line.quantity().doubleValue()).isCloseTo(135, within(10.0));
        assertThat(line.amount()).isEqualTo(Money.of("1.50", "EUR"));

        FillId none = new FillId("none");
        club.station.recorded(club.station
                .benches
                .guidingAFill()
                .start(
                        Station.BENCH,
                        new StartFill(none, bottle, Station.bar("150"), club.station.reads("66")),
                        club.station.submission()));
        club.station.recorded(club.station
                .benches
                .guidingAFill()
                .abandon(Station.BENCH, new AbandonFill(none, "hose leaks"), club.station.submission()));
        assertThat(club.books().findUncharged(none).orElseThrow().why()).isEqualTo(Uncharged.Why.NOTHING_WENT_IN);
    }

    @Test
    void aFillBeforeTheFirstTariffIsListedAndChargedOnceATariffReachesBack() {
        BottleId bottle = club.bottle("M-11", "2");
        Instant may = Instant.parse("2026-05-20T10:00:00Z");
        club.fill("early", bottle, "30", "180", may);
        assertThat(club.books().book().lines()).isEmpty();
        assertThat(club.books().uncharged())
                .extracting(one -> one.why() + " " + one.day() + " " + one.bottle())
                .containsExactly("NO_TARIFF 2026-05-20 M-11");
    }

    @Test
    void pricesSetAnewChargeAnewWhatTheyReach() {
        BottleId bottle = club.bottle("M-11", "2");
        club.fill("one", bottle, "30", "180");
        club.enter(MoneyExamples.tariff(LocalDate.of(2026, 7, 1), "0.020", "1.50", "20"));
        assertThat(club.books().book().lines()).hasSize(1);
        club.enter(MoneyExamples.tariff(LocalDate.of(2026, 6, 10), "0.012", "1.50", "20"));
        assertThat(club.books().book().lines())
                .extracting(line -> line.amount().amount().toPlainString() + " " + line.reason())
                .containsExactly("3.50 ", "-3.50 prices set anew", "3.82 prices set anew");
        assertThat(club.books().working("one.2").tariff().prices().perUnit()).isEqualByComparingTo("0.011");
        assertThat(club.books().working("one.3").tariff().prices().perUnit()).isEqualByComparingTo("0.012");
    }

    @Test
    void debtNeverStandsInTheWayOfAFill() {
        BottleId bottle = club.bottle("M-11", "2");
        for (int i = 0; i < 30; i++) {
            club.fill("f" + i, bottle, "30", "180");
        }
        assertThat(club.books().book().statement("M-11", JUNE).total().amount()).isGreaterThan(new BigDecimal("100"));
        club.station.markAndLookAt(bottle);
        club.station.recorded(club.station
                .benches
                .guidingAFill()
                .start(
                        Station.BENCH,
                        new StartFill(new FillId("urgent"), bottle, Station.bar("150"), club.station.reads("30")),
                        club.station.submission()));
    }
}
