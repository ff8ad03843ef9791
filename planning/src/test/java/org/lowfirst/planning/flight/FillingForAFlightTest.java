package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** An ideal gas at 15 C: a litre of water volume gives a standard litre for each 1.01325 bar. */
class FillingForAFlightTest {

    private static final double ATM_BAR = 1.01325;

    @Test
    void onlyTheLowerOneIsFilledAndOnlyAsFarAsTheFlightNeeds() {
        List<GaugePressure> readings = filled(450, bottle("low", 2, 50, 200), bottle("high", 2, 150, 200))
                .orElseThrow();
        assertThat(readings.get(1).toBar()).isEqualTo(150.0, within(1e-9));
        assertThat(readings.get(0).toBar()).isEqualTo(450 * ATM_BAR / 2 - 150, within(1e-3));
    }

    @Test
    void whatCoversTheFlightAlreadyStaysAsItIs() {
        List<GaugePressure> readings = filled(150, bottle("low", 2, 50, 200), bottle("high", 2, 150, 200))
                .orElseThrow();
        assertThat(readings).extracting(GaugePressure::toBar).containsExactly(50.0, 150.0);
    }

    /** 2 x 100 + 2 x 250 bar L are enough for 600 L; one reading of both, 152 bar, is more than the first may hold. */
    @Test
    void oneThatIsFullSoonerLeavesTheRestToTheOther() {
        List<GaugePressure> readings = filled(600, bottle("weak", 2, 20, 100), bottle("strong", 2, 20, 300))
                .orElseThrow();
        assertThat(readings.get(0).toBar()).isEqualTo(100.0, within(1e-9));
        assertThat(readings.get(1).toBar()).isEqualTo(600 * ATM_BAR / 2 - 100, within(1e-3));
    }

    @Test
    void fullOnesThatDoNotCoverItAreSaid() {
        assertThat(filled(900, bottle("weak", 2, 20, 100), bottle("strong", 2, 20, 300)))
                .isEmpty();
    }

    private static Optional<List<GaugePressure>> filled(double litres, BottleOnBoard... bottles) {
        IdealGas gas = new IdealGas("oxygen", 0.0319988);
        FlightRequest request = new FlightRequest(
                Flights.level(12_000, 100),
                List.of(Flights.crew("all", new Flow.Constant(litres / 100.0))),
                List.of(),
                List.of(bottles),
                ReferenceCondition.ISO_15C_1ATM,
                Temperature.ofCelsius(15),
                Duration.ZERO,
                0,
                2.5);
        FlightPlan plan = ((FlightOutcome.Planned) PlanningAFlight.plan(request, gas)).plan();
        assertThat(plan.neededLitres()).isEqualTo(litres, within(1e-9));
        return FillingForAFlight.readings(
                request,
                plan,
                gas,
                request.bottles().stream().map(BottleOnBoard::servicePressure).toList());
    }

    private static BottleOnBoard bottle(String name, double litres, double reads_bar, double full_bar) {
        return new BottleOnBoard(
                name,
                Volume.ofLitres(litres),
                GaugePressure.ofBar(reads_bar),
                GaugePressure.ofBar(full_bar),
                GaugePressure.ZERO);
    }
}
