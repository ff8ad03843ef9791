package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.planning.flight.Flights.leg;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

class PlanningAFlightTest {

    private static final Profile WAVE = Flights.profile(
            leg("climb", 40, 2_000, 18_000), leg("cruise", 120, 18_000, 18_000), leg("descent", 32, 18_000, 2_000));
    /** One litre a minute for every 10,000 ft: common practice, no source. */
    private static final Flow BY_ALTITUDE = new Flow.ByAltitude(1.0);

    private static final BottleOnBoard TWO_LITRES = new BottleOnBoard(
            "B1", Volume.ofLitres(2.0), GaugePressure.ofBar(180), GaugePressure.ofBar(200), GaugePressure.ofBar(20));

    @Test
    void useByAltitudeIsTheMeanAltitudeOfEachLeg() {
        FlightPlan plan = plan(request(List.of(Flights.crew("P1", BY_ALTITUDE)), List.of(TWO_LITRES), 0, 0));
        assertThat(plan.legs()).extracting(FlightPlan.Use::name).containsExactly("climb", "cruise", "descent");
        assertThat(plan.legs().get(0).litres()).isCloseTo(40 * 1.0, within(1e-6));
        assertThat(plan.legs().get(1).litres()).isCloseTo(120 * 1.8, within(1e-6));
        assertThat(plan.legs().get(2).litres()).isCloseTo(32 * 1.0, within(1e-6));
        assertThat(plan.usedLitres()).isCloseTo(288, within(1e-6));
    }

    @Test
    void aDeviceIsOnFromItsAltitude() {
        Occupant from10000 = new Occupant("P1", Occupant.Role.CREW, new Flow.Constant(1.0), Altitude.ofFeet(10_000));
        FlightPlan plan = plan(request(List.of(from10000), List.of(TWO_LITRES), 0, 0));
        assertThat(plan.usedLitres()).isCloseTo(20 + 120 + 16, within(1e-6));
    }

    @Test
    void aPulseDeviceUsesItsShare() {
        Flow pulse = new Flow.Pulse(BY_ALTITUDE, 4.0);
        FlightPlan plan = plan(request(List.of(Flights.crew("P1", pulse)), List.of(TWO_LITRES), 0, 0));
        assertThat(plan.usedLitres()).isCloseTo(288 / 4.0, within(1e-6));
    }

    @Test
    void legsAndPeopleAddUpToTheFlight() {
        FlightPlan plan = plan(request(
                List.of(Flights.crew("P1", BY_ALTITUDE), Flights.crew("P2", new Flow.Constant(1.3))),
                List.of(TWO_LITRES),
                15,
                20));
        double legs = plan.legs().stream().mapToDouble(FlightPlan.Use::litres).sum();
        double people =
                plan.occupants().stream().mapToDouble(FlightPlan.Use::litres).sum();
        assertThat(legs).isCloseTo(plan.usedLitres(), within(1e-9 * legs));
        assertThat(people).isCloseTo(plan.usedLitres(), within(1e-9 * legs));
        assertThat(plan.marginLitres()).isCloseTo(0.15 * plan.usedLitres(), within(1e-9));
        assertThat(plan.reserveLitres()).isCloseTo(20 * (1.8 + 1.3), within(1e-9));
    }

    @Test
    void theReadingNeededJustCoversTheFlight() {
        FlightRequest request = request(List.of(Flights.crew("P1", BY_ALTITUDE)), List.of(TWO_LITRES), 10, 30);
        GaugePressure needed = plan(request).pressureNeeded().orElseThrow().reading();
        FlightPlan again = plan(request(request.occupants(), List.of(withReading(TWO_LITRES, needed)), 10, 30));
        assertThat(again.usableLitres()).isCloseTo(again.neededLitres(), within(0.05));
    }

    @Test
    void theLastMomentToStartDownLeavesTheReserve() {
        BottleOnBoard low = withReading(TWO_LITRES, GaugePressure.ofBar(95));
        FlightPlan plan = plan(request(List.of(Flights.crew("P1", BY_ALTITUDE)), List.of(low), 0, 10));
        assertThat(plan.covered()).isFalse();
        double turn = plan.turn().orElseThrow();
        double touched = plan.reserveTouched().orElseThrow();
        assertThat(turn).isLessThan(touched);
        double usedThen = 40 + (turn / 60 - 40) * 1.8;
        double minutesDown = 18_000 / (2.5 * 60 / 0.3048);
        assertThat(usedThen + minutesDown * 0.9)
                .as("use until the turn and on the way down")
                .isCloseTo(plan.usableLitres() - plan.reserveLitres(), within(0.05));
        assertThat(plan.emptied().orElseThrow()).isGreaterThan(touched);
    }

    @Test
    void aFlightThatIsCoveredHasNoTurn() {
        BottleOnBoard big = new BottleOnBoard(
                "B9", Volume.ofLitres(10), GaugePressure.ofBar(180), GaugePressure.ofBar(200), GaugePressure.ofBar(20));
        FlightPlan plan = plan(request(List.of(Flights.crew("P1", BY_ALTITUDE)), List.of(big), 0, 30));
        assertThat(plan.covered()).isTrue();
        assertThat(plan.turn()).isEmpty();
        assertThat(plan.reserveTouched()).isEmpty();
        assertThat(plan.shortLitres()).isZero();
    }

    @Test
    void whatNoPressureCanHoldHasNoReading() {
        BottleOnBoard tiny = new BottleOnBoard(
                "B0",
                Volume.ofLitres(0.3),
                GaugePressure.ofBar(150),
                GaugePressure.ofBar(200),
                GaugePressure.ofBar(20));
        FlightPlan plan = plan(request(List.of(Flights.crew("P1", BY_ALTITUDE)), List.of(tiny), 0, 30));
        assertThat(plan.pressureNeeded()).isEmpty();
    }

    @Test
    void crewWithTheDeviceOffWhereTheRuleAsksIsAGap() {
        Occupant late = new Occupant("P1", Occupant.Role.CREW, BY_ALTITUDE, Altitude.ofFeet(16_000));
        FlightPlan plan = plan(request(List.of(late), List.of(TWO_LITRES), 0, 0));
        assertThat(plan.gaps()).isNotEmpty();
        assertThat(plan.gaps()).extracting(FlightPlan.Gap::occupant).containsOnly("P1");
        FlightPlan inTime = plan(request(
                List.of(new Occupant("P1", Occupant.Role.CREW, BY_ALTITUDE, Altitude.ofFeet(12_500))),
                List.of(TWO_LITRES),
                0,
                0));
        assertThat(inTime.gaps()).isEmpty();
    }

    @Test
    void aDeviceThatGivesNothingIsAGapWhereverOxygenIsAskedFor() {
        FlightPlan plan = plan(request(List.of(Flights.crew("P1", new Flow.Constant(0.0))), List.of(TWO_LITRES), 0, 0));
        assertThat(plan.covered()).isTrue();
        assertThat(plan.gaps()).extracting(gap -> gap.rule().reference()).contains("14 CFR 91.211(a)(2)");
        double above14000_s = plan.gaps().stream()
                .filter(gap -> gap.rule().reference().equals("14 CFR 91.211(a)(2)"))
                .mapToDouble(gap -> gap.span().seconds())
                .sum();
        assertThat(above14000_s).isCloseTo((10 + 120 + 8) * 60, within(1e-6));
    }

    @Test
    void badRequestsAreRefusedWithMeasuredAndLimit() {
        assertThat(problem(request(List.of(), List.of(TWO_LITRES), 0, 0)))
                .isEqualTo(FlightOutcome.Problem.NO_OCCUPANTS);
        List<Occupant> twins = List.of(Flights.crew("P1", BY_ALTITUDE), Flights.crew("P1", BY_ALTITUDE));
        assertThat(problem(request(twins, List.of(TWO_LITRES), 0, 0))).isEqualTo(FlightOutcome.Problem.DUPLICATE_NAME);
        List<Occupant> one = List.of(Flights.crew("P1", BY_ALTITUDE));
        assertThat(problem(request(one, List.of(TWO_LITRES), -1, 0)))
                .isEqualTo(FlightOutcome.Problem.MARGIN_BELOW_ZERO);
        assertThat(problem(request(one, List.of(TWO_LITRES), Double.NaN, 0)))
                .isEqualTo(FlightOutcome.Problem.MARGIN_BELOW_ZERO);
        assertThat(problem(request(one, List.of(withReading(TWO_LITRES, GaugePressure.ofBar(-3))), 0, 0)))
                .isEqualTo(FlightOutcome.Problem.READING_BELOW_ZERO);
        assertThat(problem(request(one, List.of(withReading(TWO_LITRES, GaugePressure.ofBar(260))), 0, 0)))
                .isEqualTo(FlightOutcome.Problem.READING_ABOVE_SERVICE_PRESSURE);
    }

    private static FlightRequest request(
            List<Occupant> occupants, List<BottleOnBoard> bottles, double margin, long reserveMinutes) {
        return new FlightRequest(
                WAVE,
                occupants,
                OxygenRules.ofSet("us-91"),
                bottles,
                ReferenceCondition.ISO_15C_1ATM,
                Temperature.ofCelsius(15),
                Duration.ofMinutes(reserveMinutes),
                margin,
                2.5);
    }

    private static BottleOnBoard withReading(BottleOnBoard bottle, GaugePressure reading) {
        return new BottleOnBoard(bottle.name(), bottle.waterVolume(), reading, bottle.servicePressure(), bottle.keep());
    }

    private static FlightPlan plan(FlightRequest request) {
        FlightOutcome outcome = PlanningAFlight.plan(request, Oxygen.schmidtWagner());
        if (outcome instanceof FlightOutcome.Planned planned) {
            return planned.plan();
        }
        throw new AssertionError("refused: " + outcome);
    }

    private static FlightOutcome.Problem problem(FlightRequest request) {
        FlightOutcome outcome = PlanningAFlight.plan(request, Oxygen.schmidtWagner());
        if (outcome instanceof FlightOutcome.Refused refused) {
            return refused.problem();
        }
        throw new AssertionError("not refused: " + outcome);
    }
}
