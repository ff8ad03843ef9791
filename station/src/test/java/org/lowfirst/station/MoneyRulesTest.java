package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.station.charges.GasUnit;

class MoneyRulesTest {

    static final LocalDate DAY = LocalDate.ofInstant(Larkmoor.TEN, ZoneOffset.UTC);
    private static final YearMonth BEFORE = YearMonth.from(DAY).minusMonths(1);

    @Test
    void aTariffThatCannotBePaidIsRefused() {
        assertThat(rule(tariff("-0.011"))).isEqualTo(Rule.PRICE_BELOW_ZERO);
        assertThat(rule(tariff("XQQ", "0.011", "20", "0.01", 1))).isEqualTo(Rule.CURRENCY_UNKNOWN);
        assertThat(rule(tariff("EUR", "0.011", "-1", "0.01", 1))).isEqualTo(Rule.GUEST_PERCENT_OUT_OF_RANGE);
        assertThat(rule(tariff("EUR", "0.011", "2000", "0.01", 1))).isEqualTo(Rule.GUEST_PERCENT_OUT_OF_RANGE);
        assertThat(rule(tariff("EUR", "0.011", "20", "0.001", 1))).isEqualTo(Rule.ROUNDING_STEP_NOT_PAYABLE);
        assertThat(rule(tariff("JPY", "1", "20", "0.1", 1))).isEqualTo(Rule.ROUNDING_STEP_NOT_PAYABLE);
        assertThat(rule(tariff("EUR", "0.011", "20", "0", 1))).isEqualTo(Rule.ROUNDING_STEP_NOT_PAYABLE);
        assertThat(rule(tariff("EUR", "0.011", "20", "0.01", 4))).isEqualTo(Rule.QUANTITY_DECIMALS_OUT_OF_RANGE);
        assertThat(tariff("-0.011").findTariff()).isEmpty();
    }

    @Test
    void theRefusalSaysWhatWasMeasuredAndWhatIsAllowed() {
        Decision decision =
                enter(Journal.given(), new MoneyFact.TariffSet(DAY, tariff("EUR", "0.011", "20", "0.001", 1)));
        assertThat(decision).isEqualTo(new Refused(Rule.ROUNDING_STEP_NOT_PAYABLE, "", euro("0.001"), euro("0.01")));
    }

    @Test
    void accountsAreKeptInOneCurrency() {
        Journal journal = Journal.given(new MoneyFact.TariffSet(DAY, tariff("0.011")));
        MoneyFact dollars = new MoneyFact.TariffSet(DAY.plusDays(1), tariff("USD", "0.011", "20", "0.01", 1));
        assertThat(((Refused) enter(journal, dollars)).rule()).isEqualTo(Rule.CURRENCY_OTHER);
        assertThat(((Refused) enter(journal, dollars)).subject()).isEqualTo("USD (EUR)");
        Journal bought = Journal.given(cost(CostKind.DELIVERY, "40"));
        assertThat(((Refused) enter(bought, dollars)).rule()).isEqualTo(Rule.CURRENCY_OTHER);
    }

    @Test
    void theTariffInForceIsTheLatestThatHasBegun() {
        Bench bench = Journal.given(
                        new MoneyFact.TariffSet(DAY.plusDays(10), tariff("0.013")),
                        new MoneyFact.TariffSet(DAY, tariff("0.011")),
                        new MoneyFact.TariffSet(DAY, tariff("0.012")))
                .bench();
        Accounts accounts = bench.areas().accounts();
        assertThat(accounts.findTariff(DAY.minusDays(1))).isEmpty();
        assertThat(accounts.findTariff(DAY.plusDays(9)).orElseThrow().tariff()).isEqualTo(tariff("0.012"));
        assertThat(accounts.findTariff(DAY.plusDays(10)).orElseThrow().tariff()).isEqualTo(tariff("0.013"));
    }

    @Test
    void aMonthIsClosedOnceAfterItsEndAndNeverOpenedAgain() {
        Journal journal = Journal.given(new MoneyFact.MonthClosed(BEFORE, "Ida"));
        assertThat(rule(journal, new MoneyFact.MonthClosed(BEFORE, "Ida"))).isEqualTo(Rule.MONTH_ALREADY_CLOSED);
        assertThat(rule(journal, new MoneyFact.MonthClosed(BEFORE.minusMonths(1), "Ida")))
                .isEqualTo(Rule.MONTH_ALREADY_CLOSED);
        assertThat(rule(journal, new MoneyFact.MonthClosed(YearMonth.from(DAY), "Ida")))
                .isEqualTo(Rule.MONTH_NOT_OVER);
        assertThat(rule(Journal.given(), new MoneyFact.MonthClosed(BEFORE, " ")))
                .isEqualTo(Rule.NAME_EMPTY);
        Entry entry = last(journal);
        assertThat(((Refused) journal.when(new Command.CorrectEntry(entry, "too early", null))).rule())
                .isEqualTo(Rule.MONTH_STAYS_CLOSED);
    }

    @Test
    void nothingIsEnteredOrChangedInAClosedMonth() {
        LocalDate day = BEFORE.atDay(20);
        Journal journal =
                Journal.given(new MoneyFact.CostEntered(new StatedCost(CostKind.DELIVERY, day, null, euro("40"), "")));
        Entry cost = last(journal);
        journal.add(new MoneyFact.MonthClosed(BEFORE, "Ida"));
        assertThat(rule(journal, new MoneyFact.TariffSet(day, tariff("0.011")))).isEqualTo(Rule.DAY_IN_CLOSED_MONTH);
        assertThat(rule(journal, (MoneyFact) cost.fact())).isEqualTo(Rule.DAY_IN_CLOSED_MONTH);
        assertThat(rule(journal, new MoneyFact.RentBilled("17", day, stay(10)))).isEqualTo(Rule.DAY_IN_CLOSED_MONTH);
        assertThat(((Refused) journal.when(new Command.CorrectEntry(cost, "slip", null))).rule())
                .isEqualTo(Rule.DAY_IN_CLOSED_MONTH);
        assertThat(rule(journal, new MoneyFact.TariffSet(BEFORE.plusMonths(1).atDay(1), tariff("0.011"))))
                .isNull();
    }

    @Test
    void amountsAreOnesThatArePaid() {
        assertThat(rule(Journal.given(), cost(CostKind.DELIVERY, "0"))).isEqualTo(Rule.AMOUNT_ZERO);
        assertThat(rule(Journal.given(), cost(CostKind.DELIVERY, "0.005"))).isEqualTo(Rule.AMOUNT_TOO_FINE);
        assertThat(rule(Journal.given(), cost(CostKind.DEPOSIT_PAID, "80"))).isEqualTo(Rule.SERIAL_EMPTY);
        assertThat(rule(Journal.given(), cost(CostKind.DELIVERY, "-5"))).isEqualTo(Rule.AMOUNT_BELOW_ZERO);
        assertThat(Journal.given().when(new Command.Enter(cost(CostKind.DELIVERY, "-5")), true))
                .isInstanceOf(Accepted.class);
        MoneyFact late =
                new MoneyFact.CostEntered(new StatedCost(CostKind.DELIVERY, DAY.plusDays(5), null, euro("5"), ""));
        assertThat(rule(Journal.given(), late)).isEqualTo(Rule.DAY_OUT_OF_RANGE);
    }

    @Test
    void aLineOfABillMayBeWrongButItsDaysRunForward() {
        BilledStay backwards = new BilledStay("K 1", DAY, DAY.minusDays(1), 1, euro("1"), euro("1"));
        assertThat(rule(Journal.given(), new MoneyFact.RentBilled("17", DAY, backwards)))
                .isEqualTo(Rule.DAYS_BACKWARDS);
        assertThat(rule(Journal.given(), new MoneyFact.RentBilled("17", DAY, stay(0))))
                .isEqualTo(Rule.DAY_COUNT_OUT_OF_RANGE);
        assertThat(rule(Journal.given(), new MoneyFact.RentBilled("17", DAY, stay(12))))
                .isNull();
        assertThat(rule(Journal.given(), new MoneyFact.RentAgreed(DAY, rent("-1"))))
                .isEqualTo(Rule.PRICE_BELOW_ZERO);
    }

    @Test
    void onlyThoseWhoKeepTheChargesSetPricesAndCloseMonths() {
        PersonDetails ida = new PersonDetails("Ida", Set.of(Role.FILLER), null, null);
        PersonDetails tom = new PersonDetails("Tom", Set.of(Role.RESPONSIBLE), null, null);
        Journal journal = Journal.given(new CrewFact.PersonDescribed(tom), new CrewFact.PersonDescribed(ida));
        MoneyFact prices = new MoneyFact.TariffSet(DAY, tariff("0.011"));
        assertThat(rule(journal, prices)).isEqualTo(Rule.NOT_TREASURER);
        assertThat(rule(journal, new MoneyFact.MonthClosed(BEFORE, "Ida"))).isEqualTo(Rule.NOT_TREASURER);
        assertThat(rule(journal, new MoneyFact.FillBilled(Larkmoor.FILL, "M. Ash", false)))
                .isNull();
        journal.add(new CrewFact.PersonDescribed(new PersonDetails("Ida", Set.of(Role.TREASURER), null, null)));
        assertThat(rule(journal, prices)).isNull();
    }

    static StatedTariff tariff(String perLitre) {
        return tariff("EUR", perLitre, "20", "0.01", 1);
    }

    private static StatedTariff tariff(String currency, String perLitre, String guests, String step, int decimals) {
        return new StatedTariff(
                currency,
                GasUnit.STANDARD_LITRE,
                ReferenceCondition.ISO_15C_1ATM,
                decimals,
                new StatedPrices(
                        new BigDecimal(perLitre), BigDecimal.ZERO, new BigDecimal("1.50"), new BigDecimal(guests)),
                new StatedRounding(StatedRounding.Way.HALF_UP, new BigDecimal(step)));
    }

    static MoneyFact cost(CostKind kind, String amount) {
        return new MoneyFact.CostEntered(new StatedCost(kind, DAY, null, euro(amount), ""));
    }

    static StatedRent rent(String perDay) {
        return new StatedRent(
                euro(perDay),
                new StatedRounding(StatedRounding.Way.HALF_UP, new BigDecimal("0.01")),
                DayCount.BOTH_ENDS,
                0);
    }

    static BilledStay stay(int days) {
        return new BilledStay("K 1", DAY.minusDays(9), DAY, days, euro("0.245"), euro("2.45"));
    }

    private static StatedMoney euro(String amount) {
        return new StatedMoney(new BigDecimal(amount), "EUR");
    }

    private static Rule rule(StatedTariff tariff) {
        return ((Refused) enter(Journal.given(), new MoneyFact.TariffSet(DAY, tariff))).rule();
    }

    private static @Nullable Rule rule(Journal journal, MoneyFact fact) {
        return enter(journal, fact) instanceof Refused refused ? refused.rule() : null;
    }

    private static Decision enter(Journal journal, MoneyFact fact) {
        return journal.when(new Command.Enter(fact));
    }

    private static Entry last(Journal journal) {
        List<Entry> entries = journal.entries();
        return entries.get(entries.size() - 1);
    }
}
