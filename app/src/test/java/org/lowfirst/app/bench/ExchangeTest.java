package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Step;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
import org.lowfirst.station.Stand;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.charges.Money;

/**
 * The bank that cannot reach, then an exchange. Pressures and counts: an invented scenario computed with CoolProp 8.0.0 (Schmidt
 * and Wagner), settled, 15 C, to 1 bar. P 44, Q 97, R 131, 50 L each; a bottle of 10 L at 20, target 150.
 */
class ExchangeTest {

    private static final Delivery PAPER = new Delivery("LOT 7", LocalDate.of(2026, 6, 14), "Holm Gases");

    @TempDir
    private Path directory;

    private Station station;
    private SupplyId p;
    private BottleId bottle;

    @BeforeEach
    void open() {
        station = Station.at(directory, "15");
        p = station.supply("P", "44");
        station.supply("Q", "97");
        station.supply("R", "131");
        bottle = station.bottle("W-10", "10", "20");
    }

    @AfterEach
    void close() {
        station.close();
    }

    @Test
    void theLowestIsAdvised() {
        List<ExchangeOffer> offers = exchanging().offers(Station.BENCH, "");
        assertThat(offers).extracting(ExchangeOffer::advised).containsExactly(true, false, false);
        assertThat(offers.get(0).leaving().supply().id()).isEqualTo(p);
        assertThat(Objects.requireNonNull(offers.get(0).now()).complete()).isZero();
        assertThat(Objects.requireNonNull(offers.get(0).withFull()).complete()).isPositive();
    }

    @Test
    void theNewcomerTakesThePlaceAndTheRanksMove() {
        begin();
        takeOff();
        SupplyId p2 = takeIn("P2", "200");
        BankView bank = station.benches.keepingTheBank().bank(Station.BENCH);
        assertThat(names(bank.supplies())).containsExactly("Q", "R", "P2");
        assertThat(bank.supplies()).extracting(SupplyView::rank).containsExactly(1, 2, 3);
        assertThat(names(Arrangement.of(bank, "").places())).containsExactly("P2", "Q", "R");
        assertThat(Arrangement.of(bank, "").interconnects()).isEqualTo(2);
        Stand stand = bank.bench().stand();
        assertThat(stand.leaving()).isEmpty();
        assertThat(stand.findNewcomer(p)).contains(p2);
        assertThat(stand.delivery(p2)).isEqualTo(PAPER);
    }

    @Test
    void theNextBottleIsFilledAsTheScenarioSays() {
        begin();
        takeOff();
        takeIn("P2", "200");
        FillPlan plan = (FillPlan)
                station.benches.planningAFill().plan(Station.BENCH, bottle, Station.bar("150"), station.reads("20"));
        List<Step> steps = plan.fill().steps();
        assertThat(steps).extracting(Step::supply).containsExactly("Q", "R", "P2");
        assertThat(steps.get(0).bottle().after().toBar()).isCloseTo(84.5, within(1.0));
        assertThat(steps.get(1).bottle().after().toBar()).isCloseTo(123.2, within(1.0));
        assertThat(steps.get(2).supplyReading().after().toBar()).isCloseTo(194.3, within(1.0));
        assertThat(plan.fillsLeft().complete()).isEqualTo(5);
        assertThat(Objects.requireNonNull(plan.fillsLeft().nextStopsAt()).toBar())
                .isCloseTo(143.3, within(1.0));
    }

    @Test
    void aShortDeliveryIsRankedByWhatItReads() {
        begin();
        takeOff();
        takeIn("P2", "120");
        assertThat(names(station.benches.keepingTheBank().bank(Station.BENCH).supplies()))
                .containsExactly("Q", "P2", "R");
    }

    @Test
    void anExchangeLeftHalfwayIsStillUnderWayAfterAStart() {
        begin();
        takeOff();
        station.close();
        station = Station.at(directory, "15");
        Stand stand =
                station.benches.keepingTheBank().bank(Station.BENCH).bench().stand();
        assertThat(stand.leaving()).containsExactly(p);
        takeIn("P2", "200");
        assertThat(station.benches
                        .keepingTheBank()
                        .bank(Station.BENCH)
                        .bench()
                        .stand()
                        .leaving())
                .isEmpty();
    }

    @Test
    void theNewcomerAndItsPapersAreEnteredTogetherAndOnce() {
        begin();
        takeOff();
        Submission submission = station.submission();
        List<Entry> entries = station.recorded(send("P2", "200", submission));
        assertThat(entries)
                .extracting(Entry::fact)
                .hasExactlyElementsOfTypes(
                        Fact.SupplyConnected.class, StandFact.SupplyDelivered.class, StandFact.ExchangeMade.class);
        assertThat(send("P2", "200", submission)).isEqualTo(new Recording.Recorded(entries, true));
    }

    @Test
    void aNewcomerThatIsRefusedLeavesTheExchangeUnderWay() {
        begin();
        takeOff();
        Recording refused = send("Q", "200", station.submission());
        assertThat(refused).isEqualTo(new Recording.NotRecorded(Refused.of(Rule.NAME_TAKEN, "Q")));
        assertThat(station.benches
                        .keepingTheBank()
                        .bank(Station.BENCH)
                        .bench()
                        .stand()
                        .leaving())
                .containsExactly(p);
    }

    @Test
    void theNewcomerStandsInTheBankOfTheOneThatLeft() {
        station.recorded(station.benches
                .keepingTheBank()
                .stand(Station.BENCH, new StandFact.SupplyPlaced(p, "trailer"), station.submission()));
        begin();
        takeOff();
        SupplyId p2 = takeIn("P2", "200");
        BankView bank = station.benches.keepingTheBank().bank(Station.BENCH);
        assertThat(bank.in("trailer")).extracting(view -> view.supply().id()).containsExactly(p2);
    }

    /** 2,290.9 L of the 10,642.4 L of a full one at 200 bar and 15 C (CoolProp 8.0.0), so 21.53 % of what was paid. */
    @Test
    void whatGoesBackIsPricedByTheLatestFillingPaidFor() {
        Supply leaving = station.benches
                .keepingTheBank()
                .bank(Station.BENCH)
                .supplies()
                .get(0)
                .supply();
        assertThat(exchanging().returned(Station.BENCH, leaving).paid()).isNull();
        paid("80.00", "2026-06-01");
        paid("100.00", "2026-06-02");
        Money paid = Objects.requireNonNull(
                exchanging().returned(Station.BENCH, leaving).paid());
        assertThat(paid.currency().getCurrencyCode()).isEqualTo("EUR");
        assertThat(paid.amount().doubleValue()).isCloseTo(21.53, within(0.011));
    }

    private void paid(String amount, String day) {
        station.recorded(station.benches
                .keepingAccounts()
                .enter(
                        Station.BENCH,
                        new MoneyFact.CostEntered(new StatedCost(
                                CostKind.CONTENT,
                                LocalDate.parse(day),
                                null,
                                new StatedMoney(new BigDecimal(amount), "EUR"),
                                "")),
                        station.submission()));
    }

    @Test
    void nothingIsExchangedWhileABottleIsFilled() {
        station.recorded(station.benches
                .guidingAFill()
                .start(
                        Station.BENCH,
                        new StartFill(new FillId("fill-1"), bottle, Station.bar("150"), station.reads("20")),
                        null,
                        station.submission()));
        assertThat(exchanging().begin(Station.BENCH, p, station.submission()))
                .isEqualTo(new Recording.NotRecorded(Refused.of(Rule.FILL_ALREADY_OPEN, "W-10")));
    }

    @Test
    void oneThatHasLeftCannotLeaveAgain() {
        takeOff();
        assertThat(exchanging().begin(Station.BENCH, p, station.submission()))
                .isEqualTo(new Recording.NotRecorded(Refused.of(Rule.SUPPLY_NOT_CONNECTED, "P")));
    }

    private void begin() {
        station.recorded(exchanging().begin(Station.BENCH, p, station.submission()));
    }

    private void takeOff() {
        station.recorded(exchanging()
                .takeOff(
                        Station.BENCH,
                        new RemoveSupply(p, station.reads("44"), "to the supplier"),
                        station.submission()));
    }

    private SupplyId takeIn(String name, String bar) {
        station.recorded(send(name, bar, Submission.now(new EntryKey("newcomer-" + name), "Ida")));
        return new SupplyId("newcomer-" + name);
    }

    private Recording send(String name, String bar, Submission submission) {
        SupplyDetails details = new SupplyDetails(name, "S-1", Station.litres("50"), Station.bar("200"));
        return exchanging()
                .takeIn(
                        Station.BENCH,
                        p,
                        new ConnectSupply(new SupplyId("newcomer-" + name), details, station.reads(bar)),
                        PAPER,
                        submission);
    }

    private ExchangingASupply exchanging() {
        return station.benches.exchangingASupply();
    }

    private static List<String> names(List<SupplyView> views) {
        return views.stream().map(view -> view.supply().details().name()).toList();
    }
}
