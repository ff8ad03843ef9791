package org.lowfirst.planning.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.Remedies;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;
import org.lowfirst.planning.study.BottleUse;

/** What is advised, against the planner of one fill and against common sense. */
final class AdvisingExchangeTest {

    private static final Conditions CONDITIONS =
            Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(15), ReferenceRule.EU);
    private static final BottleUse LARGE = use(10, 20, 20);
    private static final Rate ONE_IN_TWO_DAYS = new Rate(0.5, 0.2);

    private static BottleUse use(double litres, double startLowest, double startHighest) {
        return new BottleUse(
                "usual",
                Volume.ofLitres(litres),
                GaugePressure.ofBar(200),
                GaugePressure.ofBar(150),
                GaugePressure.ofBar(startLowest),
                GaugePressure.ofBar(startHighest),
                1);
    }

    private static List<SupplyState> bank(double... bars) {
        return IntStream.range(0, bars.length)
                .mapToObj(i -> new SupplyState(
                        String.valueOf((char) ('P' + i)), Volume.ofLitres(50), GaugePressure.ofBar(bars[i])))
                .toList();
    }

    private static Terms terms(double leadDays, double perMissedFill) {
        return new Terms(GaugePressure.ofBar(200), 60, 35, leadDays, perMissedFill);
    }

    private static ExchangeAdvice advice(List<SupplyState> bank, BottleUse use, Terms terms) {
        ExchangeOutcome outcome =
                AdvisingExchange.advise(new ExchangeRequest(CONDITIONS, bank, List.of(use), terms, ONE_IN_TWO_DAYS, 1));
        assertThat(outcome).isInstanceOf(ExchangeAdvice.class);
        return (ExchangeAdvice) outcome;
    }

    /**
     * Three supplies that cannot finish a bottle. Expected: computed outside this project (CoolProp 8.0.0): exchange the lowest; then
     * 5 fills, and a 6th to 143.3 bar.
     */
    @Test
    void aBankThatCannotFinishSendsTheLowestBack() {
        ExchangeAdvice advice = advice(bank(44, 97, 131), LARGE, new Terms(GaugePressure.ofBar(200), 60, 5, 0, 20));
        assertThat(advice.fillsLeft()).isZero();
        assertThat(advice.waits()).isFalse();
        ExchangeOption best = advice.bestExchange();
        assertThat(best.supplies()).containsExactly("P");
        assertThat(best.fillsLeft().complete()).isEqualTo(5);
        assertThat(Objects.requireNonNull(best.fillsLeft().nextStopsAt()).to(PressureUnit.BAR))
                .isEqualTo(143.3, within(0.05));
        assertThat(best.costNow()).isEqualTo(65);
        assertThat(advice.inWords(ShownUnits.METRIC))
                .matches(
                        "Order now and send back P: it returns gas worth \\d+\\.\\d\\d and leaves 5, and a 6th to about 143 bar\\.");
    }

    @Test
    void singleExchangesAreThoseOfThePlannersRemedies() {
        List<SupplyState> bank = bank(44, 97, 131);
        BottleToFill bottle = new BottleToFill(
                "usual", LARGE.waterVolume(), LARGE.startLowest(), LARGE.target(), LARGE.servicePressure());
        FillPlan plan =
                (FillPlan) FillPlanner.under(CONDITIONS).plan(new FillRequest(bank, bottle, GaugePressure.ofBar(200)));
        Remedies remedies = Objects.requireNonNull(plan.remedies());
        ExchangeAdvice advice = advice(bank, LARGE, terms(0, 20));
        assertThat(remedies.exchanges()).hasSize(3).allSatisfy(choice -> {
            ExchangeOption option = option(advice, choice.supply());
            assertThat(option.returned().moles()).isEqualTo(choice.returned().moles(), within(1e-9));
            assertThat(option.fillsLeft())
                    .isEqualTo(Objects.requireNonNull(choice.withFull()).fillsLeft());
        });
        assertThat(remedies.exchanges().get(0).supply()).isEqualTo("P");
    }

    private static ExchangeOption option(ExchangeAdvice advice, String... supplies) {
        return advice.options().stream()
                .filter(option -> option.supplies().equals(List.of(supplies)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everySupplyEveryPairAndWaitingAreLookedAtCheapestFirst() {
        ExchangeAdvice advice = advice(bank(80, 120, 160, 195), use(3, 30, 90), terms(0, 20));
        assertThat(advice.options())
                .hasSize(1 + 4 + 6)
                .isSortedAccordingTo(Comparator.comparingDouble(ExchangeOption::aboveBest));
        assertThat(advice.options().get(0).aboveBest()).isZero();
        ExchangeOption pair = option(advice, "P", "Q");
        assertThat(pair.returned().moles())
                .isEqualTo(
                        option(advice, "P").returned().moles()
                                + option(advice, "Q").returned().moles(),
                        within(1e-9));
        assertThat(pair.costNow()).isEqualTo(155);
    }

    @Test
    void withFillsLeftAndNoLeadTimeWaitingIsCheaperThanAnyExchange() {
        ExchangeAdvice advice = advice(bank(80, 120, 160, 195), use(3, 30, 90), terms(0, 20));
        assertThat(advice.fillsLeft()).isGreaterThan(5);
        assertThat(advice.waits()).isTrue();
        assertThat(advice.orderAt()).isZero();
        assertThat(advice.options().get(0).waits()).isTrue();
        assertThat(option(advice, "S").aboveBest())
                .isGreaterThan(option(advice, "P").aboveBest());
        assertThat(advice.inWords(ShownUnits.METRIC))
                .matches(
                        "Wait: 20 fills are left\\. Order when 0 fills are left, in about 40 days, and send back P and Q"
                                + " then\\. Sending .* back now costs \\d+\\.\\d\\d more over the coming year\\.");
    }

    /**
     * One kind of bottle, so that the year can be followed by hand. Expected: worked out apart from this code with a port of the oxygen
     * equation: with deliveries at 35 the year costs 873.20 when a bottle is waited for and both lowest are sent back then, 885.40
     * with the lowest alone, 912.00 with the lowest now, 953.00 with both now; with deliveries at 300 it is 3141.60, 3355.20,
     * 3456.00 and 3444.00.
     */
    @Test
    void whereDeliveriesAreDearWaitingEndsWithAPair() {
        for (double delivery : new double[] {35, 300}) {
            Terms terms = new Terms(GaugePressure.ofBar(195), 60, delivery, 2, 20);
            ExchangeAdvice advice = (ExchangeAdvice) AdvisingExchange.advise(new ExchangeRequest(
                    CONDITIONS, bank(100, 165, 195), List.of(use(5, 40, 40)), terms, new Rate(100 / 365.0, 0), 1));
            assertThat(advice.waits()).isTrue();
            assertThat(advice.options().get(0).waits()).isTrue();
            assertThat(advice.later()).containsExactly("P", "Q");
            assertThat(option(advice, "P").aboveBest()).isCloseTo(delivery == 35 ? 38.80 : 314.40, within(0.005));
            assertThat(option(advice, "P", "Q").aboveBest()).isCloseTo(delivery == 35 ? 79.80 : 302.40, within(0.005));
        }
    }

    /** Gas for next to nothing and dear deliveries: what is advised and what is cheapest must not contradict each other. */
    @Test
    void theSentenceAgreesWithTheTable() {
        for (double price : new double[] {1, 10, 60, 500}) {
            for (double lead : new double[] {0, 4}) {
                for (double[] bars : new double[][] {{80, 120, 160, 195}, {60, 100, 158}, {100, 165, 195}}) {
                    Terms terms = new Terms(GaugePressure.ofBar(200), price, 35, lead, 15);
                    ExchangeAdvice advice = advice(bank(bars), use(3, 30, 90), terms);
                    assertThat(advice.options().get(0).waits()).isEqualTo(advice.waits());
                }
            }
        }
    }

    @Test
    void aLongerLeadTimeAndDearerMissedFillsOrderEarlier() {
        BottleUse small = use(3, 30, 90);
        int before = -1;
        for (double lead : new double[] {0, 4, 10}) {
            int at = advice(bank(80, 120, 160, 195), small, terms(lead, 60)).orderAt();
            assertThat(at).isGreaterThan(before);
            before = at;
        }
        assertThat(advice(bank(80, 120, 160, 195), small, terms(10, 600)).orderAt())
                .isGreaterThan(before);
        assertThat(advice(bank(80, 120, 160, 195), small, terms(10, 0)).orderAt())
                .isZero();
    }

    @Test
    void shortlyBeforeTheEndALongLeadTimeOrdersNow() {
        ExchangeAdvice advice = advice(bank(60, 100, 158), use(3, 30, 90), terms(14, 40));
        assertThat(advice.fillsLeft()).isBetween(1, 6);
        assertThat(advice.waits()).isFalse();
        assertThat(advice.daysUntilOrder()).isZero();
    }

    @Test
    void heldBackSuppliesStay() {
        List<SupplyState> bank = List.of(
                bank(44, 97, 131).get(0).holdBack(),
                bank(44, 97, 131).get(1),
                bank(1, 1, 170).get(2));
        ExchangeAdvice advice = advice(bank, use(3, 30, 90), terms(0, 20));
        assertThat(advice.options()).noneMatch(option -> option.supplies().contains("P"));
        assertThat(advice.options()).hasSize(1 + 2 + 1);
    }

    @Test
    void aSupplyUsedFirstChangesTheFillsLeftAsInThePlanOfOneFill() {
        List<SupplyState> bank = new ArrayList<>(bank(80, 120, 195));
        bank.set(2, bank.get(2).in(Turn.FIRST));
        BottleUse use = use(3, 40, 40);
        FillPlan plan = (FillPlan) FillPlanner.under(CONDITIONS)
                .plan(new FillRequest(
                        bank,
                        new BottleToFill(
                                "usual", use.waterVolume(), use.startLowest(), use.target(), use.servicePressure())));
        ExchangeAdvice byRank = advice(bank(80, 120, 195), use, terms(0, 20));
        ExchangeAdvice first = advice(bank, use, terms(0, 20));
        assertThat(first.fillsLeft()).isEqualTo(plan.fillsLeft().complete()).isLessThan(byRank.fillsLeft());
        assertThat(option(first).fillsLeft()).isEqualTo(plan.fillsLeft());
    }

    /** Who is used first is a matter of the supply, not of its place: sending it back gives the same bank either way. */
    @Test
    void onceItIsSentBackTheOthersAreUsedByRank() {
        List<SupplyState> bank = new ArrayList<>(bank(80, 120, 195));
        bank.set(2, bank.get(2).in(Turn.FIRST));
        ExchangeAdvice byRank = advice(bank(80, 120, 195), use(3, 40, 40), terms(0, 20));
        ExchangeAdvice first = advice(bank, use(3, 40, 40), terms(0, 20));
        assertThat(option(first, "R").fillsLeft()).isEqualTo(option(byRank, "R").fillsLeft());
        assertThat(option(first, "R").returned()).isEqualTo(option(byRank, "R").returned());
        assertThat(option(first, "P", "Q").fillsLeft().complete()).isPositive();
        double same = option(first, "R").aboveBest() - option(first, "P").aboveBest();
        assertThat(same).isPositive();
    }

    @Test
    void requestsThatCannotBeMeantAreRefusedInASentence() {
        assertThat(refused(bank(44, 97), new Terms(GaugePressure.ofBar(200), -1, 35, 0, 0), ONE_IN_TWO_DAYS))
                .startsWith("The price of a supply (-1) must be 0 to 1,000,000,000.");
        assertThat(refused(bank(44, 97), terms(0, 0), new Rate(0, 0)))
                .startsWith("The fills a day (0) must be 0.001 to 300.");
        assertThat(refused(List.of(), terms(0, 0), ONE_IN_TWO_DAYS))
                .startsWith("The bank must have a supply that may be sent back.");
        assertThat(refused(bank(44, 900), terms(0, 0), ONE_IN_TWO_DAYS))
                .startsWith("The reading of supply Q (900 bar) must be 0 bar to 400 bar.");
    }

    private static String refused(List<SupplyState> bank, Terms terms, Rate rate) {
        ExchangeOutcome outcome =
                AdvisingExchange.advise(new ExchangeRequest(CONDITIONS, bank, List.of(LARGE), terms, rate, 1));
        assertThat(outcome).isInstanceOf(ExchangeOutcome.Refused.class);
        return ((ExchangeOutcome.Refused) outcome).why().inWords(ShownUnits.METRIC);
    }
}
