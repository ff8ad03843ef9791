package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Published duration figures. */
class PlanningAFlightReferenceTest {

    /**
     * TM 55-1510-221-10 table 2-5: 3,226 L usable, minutes at each flow, one decimal. The row printed "170.0" at 19.0 L/min is
     * 169.8 by division (169.7 as cut) and is left out; two manuals of the family print 178.2 min where they divide the full
     * contents at 84 % (13.9 L/min gives 194.9).
     */
    @ParameterizedTest
    @CsvSource({"8.4, 384.0", "11.8, 273.3", "15.2, 212.2", "10.2, 316.2", "13.9, 232.1", "17.5, 184.3"})
    void usableGasDividedByFlowIsTheTime(double flow, double minutes) {
        assertThat(enduranceMinutes(3226.0, flow)).isCloseTo(minutes, within(0.11));
    }

    /** TM 1-1510-224-10 p. 72: 84 % of 3,226 L at 13.9 and 18.1 L/min. */
    @ParameterizedTest
    @CsvSource({"13.9, 194.9", "18.1, 149.7"})
    void partlyFullGoesByItsContents(double flow, double minutes) {
        assertThat(enduranceMinutes(0.84 * 3226.0, flow)).isCloseTo(minutes, within(0.11));
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
