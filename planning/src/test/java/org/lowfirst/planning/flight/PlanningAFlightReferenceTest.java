package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Published duration figures. */
class PlanningAFlightReferenceTest {

    /**
     * Printed durations, see duration-usable-over-flow.csv: time = usable gas over flow, to the last digit printed, some rows cut
     * off instead of rounded. A row with a known misprint must not come out as printed.
     */
    @ParameterizedTest
    @CsvFileSource(
            resources = "/reference/duration-usable-over-flow.csv",
            useHeadersInDisplayName = true,
            numLinesToSkip = 0)
    void usableGasDividedByFlowIsTheTime(
            double usable, double flow, double printed, double computed, @Nullable String misprint) {
        double minutes = enduranceMinutes(usable, flow);
        assertThat(minutes).isCloseTo(computed, within(0.06));
        if (misprint == null) {
            assertThat(minutes).isCloseTo(printed, within(0.11));
        } else {
            assertThat(Math.abs(minutes - printed)).as(misprint).isGreaterThan(0.5);
        }
    }

    /**
     * The same sheet's cylinders for 15 or 30 min at 10 L/min above a reserve of 200 psi, printed to 50 psi or so: D 1,150, E 750,
     * M 392, H and K 300 psi. By its factors 0.16, 0.28, 1.56, 3.14 L/psi.
     */
    @ParameterizedTest
    @CsvSource({"0.16, 150, 1150, 13", "0.28, 150, 750, 15", "1.56, 300, 392, 1", "3.14, 300, 300, 5"})
    void printedReadingsForATimeFollowFromTheFactors(
            double litresPerPsi, double litres, double printed_psi, double within_psi) {
        // volume of an ideal gas that gives this many litres at 70 F and 1 atm for each psi
        BottleOnBoard bottle =
                bottle("size", litresPerPsi * 14.69595, GaugePressure.ofPsi(2000), GaugePressure.ofPsi(200));
        FlightRequest wanted = request(bottle, 10.0, litres / 10.0);
        FlightPlan plan =
                ((FlightOutcome.Planned) PlanningAFlight.plan(wanted, new IdealGas("oxygen", 0.0319988))).plan();
        assertThat(plan.pressureNeeded().orElseThrow().reading().toPsi()).isCloseTo(printed_psi, within(within_psi));
    }

    /**
     * Duration factor of the size "E", 0.28 L a psi (State EMS sheet, Virginia, Oct 2010): 1,000 psi at 2 L/min lasts 140 min.
     * The factor is a mean of sizes (4.6 to 4.8 L) and of an ideal gas from full; the real gas of a 4.6 L bottle gives more.
     */
    @Test
    void theFactorOfASizeAgreesWithItsContents() {
        BottleOnBoard e = bottle("E", 4.6, GaugePressure.ofPsi(2015), GaugePressure.ZERO);
        FlightPlan plan = plan(e, 2.0, 60);
        double litresPerPsi = plan.usableLitres() / 2015;
        assertThat(litresPerPsi).isBetween(0.28, 0.28 * 1.21);
        double leftAtAmbient = 4.6;
        assertThat(plan.usableLitres() + leftAtAmbient)
                .as("published contents 680 L")
                .isCloseTo(680, within(680 * 0.01));
    }

    /** Bisects the reading whose usable litres are those of the table, then asks the plan for the time. */
    private static double enduranceMinutes(double litres, double flow) {
        BottleOnBoard probe = bottle("aircraft", 24.0, GaugePressure.ofPsi(1850), GaugePressure.ZERO);
        FlightRequest wanted = request(probe, litres / 60.0, 60);
        FlightOutcome outcome = PlanningAFlight.plan(wanted, Oxygen.schmidtWagner());
        GaugePressure reading = ((FlightOutcome.Planned) outcome)
                .plan()
                .pressureNeeded()
                .orElseThrow()
                .reading();
        return plan(bottle("aircraft", 24.0, reading, GaugePressure.ZERO), flow, 60)
                .highestFlowMinutes()
                .orElseThrow();
    }

    private static FlightPlan plan(BottleOnBoard bottle, double flow, double minutes) {
        return ((FlightOutcome.Planned) PlanningAFlight.plan(request(bottle, flow, minutes), Oxygen.schmidtWagner()))
                .plan();
    }

    private static FlightRequest request(BottleOnBoard bottle, double flow, double minutes) {
        return new FlightRequest(
                Flights.level(12_000, minutes),
                List.of(Flights.crew("all", new Flow.Constant(flow))),
                List.of(),
                List.of(bottle),
                ReferenceCondition.US_70F_1ATM,
                Temperature.ofFahrenheit(70),
                Duration.ZERO,
                0,
                2.5);
    }

    private static BottleOnBoard bottle(String name, double litres, GaugePressure reading, GaugePressure keep) {
        return new BottleOnBoard(name, Volume.ofLitres(litres), reading, GaugePressure.ofPsi(2015), keep);
    }
}
