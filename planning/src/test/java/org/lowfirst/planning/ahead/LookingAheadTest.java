package org.lowfirst.planning.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;
import org.lowfirst.planning.study.kernel.Draws;

/** What changes a forecast, and how it speaks. */
final class LookingAheadTest {

    private static final Ordering WEEK = new Ordering(7, 2);
    private static final double[] BARS = {70, 130, 190};

    /** Two fills each Saturday. */
    private static UseHistory saturdays(int weeks) {
        LocalDate from = Aheads.TODAY.minusDays(7L * weeks);
        List<FilledOn> fills = new ArrayList<>();
        for (LocalDate day = from; day.isBefore(Aheads.TODAY); day = day.plusDays(1)) {
            if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
                fills.add(new FilledOn(day, Aheads.USUAL));
                fills.add(new FilledOn(day, Aheads.USUAL));
            }
        }
        return new UseHistory(from, 7 * weeks, fills);
    }

    private static Forecast forecast(UseHistory history, List<PlannedEvent> events, Ordering ordering, double... bars) {
        AheadRequest request = Aheads.request(history, ordering, 5, bars);
        return Aheads.forecast(LookingAhead.look(new AheadRequest(
                request.conditions(),
                request.bank(),
                request.history(),
                request.usual(),
                events,
                request.guess(),
                request.ordering(),
                request.today(),
                request.seed())));
    }

    @Test
    void theSameSeedGivesTheSameForecast() {
        assertThat(forecast(saturdays(10), List.of(), WEEK, BARS))
                .isEqualTo(forecast(saturdays(10), List.of(), WEEK, BARS));
    }

    @Test
    void moreHistoryNarrowsTheBandAndIsSaid() {
        Forecast none = forecast(UseHistory.none(Aheads.TODAY), List.of(), WEEK, BARS);
        Forecast some = forecast(saturdays(4), List.of(), WEEK, BARS);
        Forecast much = forecast(saturdays(100), List.of(), WEEK, BARS);
        assertThat(width(some)).isLessThan(width(none));
        assertThat(width(much)).isLessThan(width(some));
        assertThat(none.knowledge().inWords())
                .isEqualTo("There is no history yet: this rests on a built-in guess alone.");
        assertThat(some.knowledge().inWords())
                .isEqualTo("From 8 fills and 28 days. That is little: 16 % of the rate is still a built-in guess.");
        assertThat(much.knowledge().inWords()).isEqualTo("From 200 fills and 700 days.");
    }

    private static int width(Forecast forecast) {
        return forecast.daysLeft().high90() - forecast.daysLeft().low90();
    }

    @Test
    void saturdayFlyersComeOnSaturdays() {
        Tally tally = new Tally(saturdays(50), Aheads.TODAY, 1_000);
        UseModel use =
                new UseModel(tally, AheadAssumptions.fromFile().guess(), AheadAssumptions.fromFile(), new Draws(1, 1));
        double saturdays = 0;
        double others = 0;
        for (int i = 0; i < 2_000; i++) {
            use.step();
            LocalDate day = Aheads.TODAY.plusDays(i % 28);
            if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
                saturdays += use.comingOn(day);
            } else {
                others += use.comingOn(day);
            }
        }
        assertThat(saturdays / (2_000 / 7.0)).isBetween(1.6, 2.4);
        assertThat(others / (2_000 * 6 / 7.0)).isLessThan(0.1);
    }

    @Test
    void aPlannedEventBringsTheOrderDateForward() {
        Forecast quiet = forecast(saturdays(60), List.of(), WEEK, BARS);
        Forecast camp =
                forecast(saturdays(60), List.of(new PlannedEvent("camp", Aheads.TODAY.plusDays(10), 12)), WEEK, BARS);
        assertThat(camp.order().orderBy().orElseThrow())
                .isBefore(quiet.order().orderBy().orElseThrow());
        assertThat(camp.fillsPerWeek() - quiet.fillsPerWeek()).isBetween(2.7, 3.3);
        assertThat(camp.daysLeft().middle()).isLessThan(quiet.daysLeft().middle());
    }

    @Test
    void anEventOfAWeekIsSpreadOverItsDays() {
        LocalDate first = Aheads.TODAY.plusDays(24);
        Forecast quiet = forecast(saturdays(60), List.of(), WEEK, BARS);
        Forecast week = forecast(saturdays(60), List.of(new PlannedEvent("camp", first, 7, 14)), WEEK, BARS);
        Forecast day = forecast(saturdays(60), List.of(new PlannedEvent("camp", first, 14)), WEEK, BARS);
        assertThat(day.fillsPerWeek() - quiet.fillsPerWeek()).isBetween(3.2, 3.8);
        assertThat(week.fillsPerWeek() - quiet.fillsPerWeek())
                .as("four of its seven days lie in the coming four weeks")
                .isBetween(1.7, 2.3);
        assertThat(refused(new AheadRequest(
                        Aheads.CONDITIONS,
                        Aheads.bank(BARS),
                        UseHistory.none(Aheads.TODAY),
                        List.of(Aheads.USUAL),
                        List.of(new PlannedEvent("camp", first, 0, 14)),
                        null,
                        WEEK,
                        Aheads.TODAY,
                        1)))
                .startsWith("The days of event camp (0) must be 1 to 100.");
    }

    @Test
    void theAlertRisesAsTheBankGoesDown() {
        assertThat(forecast(saturdays(60), List.of(), WEEK, 190, 200, 200, 200)
                        .order()
                        .alert())
                .isEqualTo(Alert.NONE);
        OrderAdvice late =
                forecast(saturdays(60), List.of(), WEEK, 40, 100, 155).order();
        assertThat(late.alert()).isEqualTo(Alert.LATE);
        assertThat(late.chanceTooLate()).isGreaterThanOrEqualTo(late.chanceEmpty());
        assertThat(late.inWords()).startsWith("Order today: it should have been by 2026-03-2");
        Forecast any = forecast(saturdays(60), List.of(), new Ordering(0, 0), BARS);
        int left = (int) (any.order().orderBy().orElseThrow().toEpochDay() - Aheads.TODAY.toEpochDay());
        assertThat(any.order().alert()).isEqualTo(Alert.NONE);
        assertThat(forecast(saturdays(60), List.of(), new Ordering(left, 0), BARS)
                        .order()
                        .alert())
                .isEqualTo(Alert.NOW);
        assertThat(forecast(saturdays(60), List.of(), new Ordering(left - 3, 0), BARS)
                        .order()
                        .alert())
                .isEqualTo(Alert.SOON);
    }

    @Test
    void aReserveBringsTheOrderForward() {
        LocalDate without = forecast(saturdays(60), List.of(), new Ordering(3, 0), BARS)
                .order()
                .orderBy()
                .orElseThrow();
        assertThat(forecast(saturdays(60), List.of(), new Ordering(3, 3), BARS)
                        .order()
                        .orderBy()
                        .orElseThrow())
                .isBefore(without);
    }

    @Test
    void aBankThatLastsBeyondTheHorizonNeedsNoOrderDate() {
        UseHistory nobody = new UseHistory(Aheads.TODAY.minusDays(1_000), 1_000, List.of());
        Forecast forecast = forecast(nobody, List.of(), WEEK, 190, 200, 200, 200);
        assertThat(forecast.daysLeft().low90()).isEqualTo(forecast.longestDays());
        assertThat(forecast.order()).isEqualTo(new OrderAdvice(Alert.NONE, Optional.empty(), 0, 0));
        assertThat(forecast.order().inWords()).isEqualTo("No order is needed as far ahead as can be seen.");
    }

    @Test
    void thePictureFallsFromTheFillsLeftToNothing() {
        Forecast forecast = forecast(saturdays(30), List.of(), WEEK, BARS);
        List<DayAhead> days = forecast.days();
        assertThat(days.get(0)).isEqualTo(new DayAhead(Aheads.TODAY, forecast.fillsLeft()));
        assertThat(days).hasSizeBetween(10, 62);
        for (int i = 1; i < days.size(); i++) {
            assertThat(days.get(i).fillsLeft().middle())
                    .isLessThanOrEqualTo(days.get(i - 1).fillsLeft().middle());
        }
        assertThat(days.get(days.size() - 1).fillsLeft().middle()).isZero();
    }

    @Test
    void mixedBottlesMakeTheFillsLeftUncertain() {
        List<FilledOn> fills = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            fills.add(new FilledOn(Aheads.TODAY.minusDays(1L + i), Aheads.usual("B" + i, i % 2 == 0 ? 2 : 10)));
        }
        Band left = forecast(new UseHistory(Aheads.TODAY.minusDays(20), 20, fills), List.of(), WEEK, BARS)
                .fillsLeft();
        assertThat(left.low90()).isLessThan(left.high90());
        assertThat(left.inWords()).matches("\\d+ \\(likely \\d+ to \\d+, hardly outside \\d+ to \\d+\\)");
    }

    @Test
    void heldBackSuppliesAreNotCountedOn() {
        AheadRequest request = Aheads.request(saturdays(10), WEEK, 5, BARS);
        List<SupplyState> held = new ArrayList<>(request.bank());
        held.set(2, held.get(2).holdBack());
        Forecast forecast = Aheads.forecast(LookingAhead.look(new AheadRequest(
                request.conditions(),
                held,
                request.history(),
                request.usual(),
                List.of(),
                null,
                WEEK,
                request.today(),
                5)));
        assertThat(forecast.fillsLeft().middle()).isZero();
        assertThat(forecast.daysLeft().middle()).isLessThan(7);
    }

    /** As many as the planner of one fill counts, for one kind of bottle that always comes alike. */
    @Test
    void suppliesUsedFirstAreOpenedFirst() {
        AheadRequest request = Aheads.request(UseHistory.none(Aheads.TODAY), WEEK, 5, BARS);
        Set<Integer> counts = new HashSet<>();
        for (int first = 0; first < BARS.length; first++) {
            List<SupplyState> bank = new ArrayList<>(request.bank());
            bank.set(first, bank.get(first).in(Turn.FIRST));
            UsualFill usual = Aheads.USUAL;
            FillPlan plan = (FillPlan) FillPlanner.under(request.conditions())
                    .plan(new FillRequest(
                            bank,
                            new BottleToFill(
                                    usual.bottle(),
                                    usual.waterVolume(),
                                    usual.start(),
                                    usual.target(),
                                    usual.servicePressure())));
            Forecast forecast = Aheads.forecast(LookingAhead.look(new AheadRequest(
                    request.conditions(),
                    bank,
                    request.history(),
                    request.usual(),
                    List.of(),
                    null,
                    WEEK,
                    request.today(),
                    5)));
            assertThat(forecast.fillsLeft().middle())
                    .as("%s used first", bank.get(first).name())
                    .isEqualTo(plan.fillsLeft().complete());
            counts.add(plan.fillsLeft().complete());
        }
        assertThat(counts).as("the order matters").hasSizeGreaterThan(1);
    }

    @Test
    void requestsThatCannotBeMeantAreRefusedInASentence() {
        assertThat(refused(Aheads.request(new UseHistory(Aheads.TODAY.minusDays(3), 10, List.of()), WEEK, 1, BARS)))
                .isEqualTo("The history must end before today. Please correct it.");
        assertThat(refused(Aheads.request(saturdays(1), new Ordering(-1, 0), 1, BARS)))
                .isEqualTo(
                        "The days from order to delivery (-1) must be 0 to 365. Please check the number and its unit.");
        assertThat(refused(Aheads.request(saturdays(1), WEEK, 1)))
                .startsWith("The number of supplies that may be opened (0) must be 1 to 64.");
        AheadRequest base = Aheads.request(UseHistory.none(Aheads.TODAY), WEEK, 1, BARS);
        assertThat(refused(new AheadRequest(
                        base.conditions(),
                        base.bank(),
                        base.history(),
                        List.of(),
                        List.of(),
                        UseGuess.of(-5, 1),
                        WEEK,
                        Aheads.TODAY,
                        1)))
                .startsWith("The forecast must have at least one usual bottle or one past fill to go by.");
        assertThat(refused(Aheads.request(
                        new UseHistory(
                                Aheads.TODAY.minusDays(3),
                                3,
                                List.of(new FilledOn(Aheads.TODAY.minusDays(9), Aheads.USUAL))),
                        WEEK,
                        1,
                        BARS)))
                .isEqualTo("The fill of 2026-03-23 must lie on a day of the history. Please correct it.");
    }

    private static String refused(AheadRequest request) {
        AheadOutcome outcome = LookingAhead.look(request);
        assertThat(outcome).isInstanceOf(AheadOutcome.Refused.class);
        return ((AheadOutcome.Refused) outcome).why().inWords(ShownUnits.METRIC);
    }
}
