package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.ReadingOutcome.ReadingAdvice;
import org.lowfirst.planning.contents.ReadingOutcome.Refused;
import org.lowfirst.planning.contents.ReadingOutcome.Rule;

class ReadingCheckTest {

    private final MeteredCylinder supply = Given.cylinder("S", 50);
    private final Gauge gauge = Given.gauge("G");

    private Refused refused(ReadingOutcome outcome) {
        assertThat(outcome).isInstanceOf(Refused.class);
        return (Refused) outcome;
    }

    private GaugeReading bar(double day, double bar) {
        return Given.reading(day, "S", "G", bar, Given.measured(15));
    }

    @Test
    void aReadingAboveFullScaleIsRefusedAndKept() {
        GaugeReading typed = bar(0, 1450);
        Refused refused = refused(Given.CHECK.check(typed, supply, gauge));
        assertThat(refused.rule()).isEqualTo(Rule.ABOVE_FULL_SCALE);
        assertThat(refused.measured()).isCloseTo(1450, within(1e-9));
        assertThat(refused.limit()).isCloseTo(315, within(1e-9));
        assertThat(refused.unit()).isEqualTo("bar");
        assertThat(refused.advice()).isEqualTo(ReadingAdvice.USE_A_GAUGE_WITH_A_LARGER_SCALE);
        assertThat(refused.reading()).isEqualTo(typed);
    }

    @Test
    void limitsAreSaidInTheUnitOfTheGauge() {
        Gauge psi = Gauge.of("P", GaugeScale.of(3000, 20, PressureUnit.PSI), new GaugeAccuracy.OfFullScale(1.6));
        GaugeReading typed = new GaugeReading(Given.START, "S", "P", GaugePressure.ofPsi(3200), Given.measured(15));
        Refused refused = refused(Given.CHECK.check(typed, supply, psi));
        assertThat(refused.measured()).isCloseTo(3200, within(1e-9));
        assertThat(refused.limit()).isCloseTo(3000, within(1e-9));
        assertThat(refused.unit()).isEqualTo("psi");
    }

    @Test
    void aReadingBelowZeroIsRefused() {
        Refused refused = refused(Given.CHECK.check(bar(0, -2), supply, gauge));
        assertThat(refused.rule()).isEqualTo(Rule.BELOW_ZERO);
        assertThat(refused.advice()).isEqualTo(ReadingAdvice.CHECK_THAT_THE_GAUGE_RESTS_AT_ZERO);
    }

    @Test
    void temperaturesOutsideTheRangeAreRefusedWithTheLimit() {
        GaugeReading cold = Given.reading(0, "S", "G", 100, Given.measured(-60));
        GaugeReading hot = Given.reading(0, "S", "G", 100, Given.measured(200));
        Refused tooCold = refused(Given.CHECK.check(cold, supply, gauge));
        Refused tooHot = refused(Given.CHECK.check(hot, supply, gauge));
        assertThat(tooCold.rule()).isEqualTo(Rule.TEMPERATURE_TOO_LOW);
        assertThat(tooCold.limit()).isCloseTo(-50, within(1e-9));
        assertThat(tooHot.rule()).isEqualTo(Rule.TEMPERATURE_TOO_HIGH);
        assertThat(tooHot.measured()).isCloseTo(200, within(1e-9));
        assertThat(tooHot.unit()).isEqualTo("C");
    }

    @Test
    void timeGoingBackIsRefused() {
        Refused refused = refused(Given.CHECK.checkAfter(Given.day(2), bar(1, 100), supply, gauge));
        assertThat(refused.rule()).isEqualTo(Rule.TIME_GOES_BACK);
        assertThat(refused.advice()).isEqualTo(ReadingAdvice.CHECK_THE_CLOCK);
    }

    @Test
    void aBottleThatFallsWhileItIsFilledIsRefused() {
        Refused refused = refused(Given.CHECK.checkRising(bar(0, 80), bar(0.01, 70), supply, gauge));
        assertThat(refused.rule()).isEqualTo(Rule.FALLS_WHILE_FILLING);
        assertThat(refused.advice()).isEqualTo(ReadingAdvice.CHECK_VALVES_AND_CONNECTIONS);
        assertThat(Given.CHECK.checkRising(bar(0, 80), bar(0.01, 78), supply, gauge))
                .isInstanceOf(ReadingOutcome.Accepted.class);
    }

    @Test
    void refusedFactsStayInTheHistoryAndTheOthersCount() {
        List<BenchFact> facts = List.of(
                new ReadingTaken(bar(1, 150), Since.KEPT_SHUT),
                new ReadingTaken(bar(0, 149), Since.KEPT_SHUT),
                new ReadingTaken(bar(2, 1490), Since.KEPT_SHUT),
                new ReadingTaken(Given.reading(3, "X", "G", 90, Given.measured(15)), Since.KEPT_SHUT),
                new ReadingTaken(Given.reading(3, "S", "H", 90, Given.measured(15)), Since.KEPT_SHUT),
                new ReadingTaken(bar(3, 150), Since.KEPT_SHUT));
        BenchHistory history =
                new Reconciliation(Given.OXYGEN, Given.ASSUMED).reconcile(List.of(supply), List.of(gauge), facts);
        assertThat(history.refused())
                .extracting(r -> r.why().rule())
                .containsExactly(Rule.TIME_GOES_BACK, Rule.ABOVE_FULL_SCALE, Rule.UNKNOWN_CYLINDER, Rule.UNKNOWN_GAUGE);
        assertThat(history.refused()).extracting(BenchHistory.RefusedFact::fact).isSubsetOf(facts);
        assertThat(history.track()).hasSize(2);
    }

    @Test
    void nonsenseGaugesAreProgrammerErrors() {
        assertThatThrownBy(() -> new GaugeAccuracy.OfFullScale(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new GaugeAccuracy.Stated(GaugePressure.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GaugeScale.of(0, 1, PressureUnit.BAR)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void slopesAreThoseOfTheRealGas() {
        ContentsMeasurement m = Given.measured(0, supply, gauge, 150, Given.measured(15));
        ContentsMeasurement more = Given.measured(0, supply, gauge, 151, Given.measured(15));
        ContentsMeasurement warmer = Given.measured(0, supply, gauge, 150, Given.measured(16));
        assertThat(more.amount_mol() - m.amount_mol()).isCloseTo(m.molesPerPascal() * 1e5, within(2e-3));
        assertThat(warmer.amount_mol() - m.amount_mol()).isCloseTo(m.molesPerKelvin(), within(2e-2));
        assertThat(m.reading().temperature().value()).isEqualTo(Temperature.ofCelsius(15));
    }
}
