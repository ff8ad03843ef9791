package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.TimedLeakCheck.Outcome;
import org.lowfirst.planning.contents.TimedLeakCheck.SpoiledBy;

/** Limits of AC 43.13-1B 9-50b (read): 5 min, 1 h, 100 psi, less than 10 F. Temperature effects by CoolProp 8.0.0. */
class TimedLeakCheckTest {

    private static final double MINUTES_PER_DAY = 1440.0;

    private final MeteredCylinder bottle = Given.cylinder("B", 10);
    private final Gauge gauge =
            Gauge.of("G", GaugeScale.of(3000, 10, PressureUnit.PSI), new GaugeAccuracy.OfFullScale(1.0));

    private ContentsMeasurement reads(double minute, double psi, double fahrenheit) {
        GasTemperature gas = GasTemperature.measured(Temperature.ofFahrenheit(fahrenheit), Given.ASSUMED);
        GaugeReading reading =
                new GaugeReading(Given.day(minute / MINUTES_PER_DAY), "B", "G", GaugePressure.ofPsi(psi), gas);
        return Given.accepted(Given.CHECK.check(reading, bottle, gauge));
    }

    private TimedLeakCheck judge(ContentsMeasurement first, ContentsMeasurement second) {
        return TimedLeakCheck.judge(
                bottle,
                Given.START,
                first,
                second,
                LeakCheckLimits.published(),
                Given.OXYGEN,
                Given.ASSUMED.verdicts());
    }

    @Test
    void thePublishedLimitsAreRead() {
        LeakCheckLimits limits = LeakCheckLimits.published();
        assertThat(limits.settle()).hasMinutes(5);
        assertThat(limits.hold()).hasMinutes(60);
        assertThat(limits.mostDrop().toPsi()).isCloseTo(100, within(1e-9));
        assertThat(limits.temperatureChangeBelow_K()).isCloseTo(10 / 1.8, within(1e-12));
        assertThat(limits.source()).contains("AC 43.13-1B").contains("read");
    }

    @Test
    void aSteadyReadingPasses() {
        TimedLeakCheck check = judge(reads(5, 1800, 70), reads(65, 1790, 70));
        assertThat(check.outcome()).isEqualTo(Outcome.PASSED);
        assertThat(check.drop().toPsi()).isCloseTo(10, within(0.5));
        assertThat(check.chanceOfNoise()).isGreaterThan(0.05);
    }

    @Test
    void moreThanAHundredPsiFails() {
        TimedLeakCheck check = judge(reads(5, 1800, 70), reads(65, 1680, 70));
        assertThat(check.outcome()).isEqualTo(Outcome.FAILED);
        assertThat(check.chanceOfNoise()).isLessThan(0.01);
    }

    /** 9 F colder takes 41.5 psi; of the 95 psi seen 53.5 are lost. */
    @Test
    void theTemperatureIsTakenOut() {
        TimedLeakCheck check = judge(reads(5, 1800, 70), reads(65, 1705, 61));
        assertThat(check.dropAsRead().toPsi()).isCloseTo(95, within(1e-6));
        assertThat(check.drop().toPsi()).isCloseTo(53.52, within(0.1));
        assertThat(check.outcome()).isEqualTo(Outcome.PASSED);
    }

    /** 9 F warmer hides 41.4 psi: 80 seen are 121 lost. */
    @Test
    void aWarmerRoomDoesNotHideALeak() {
        TimedLeakCheck check = judge(reads(5, 1800, 70), reads(65, 1720, 79));
        assertThat(check.drop().toPsi()).isCloseTo(121.43, within(0.1));
        assertThat(check.outcome()).isEqualTo(Outcome.FAILED);
    }

    @Test
    void brokenConditionsAreNoCheckAndSayWhich() {
        TimedLeakCheck hasty = judge(reads(2, 1800, 70), reads(32, 1795, 82));
        assertThat(hasty.outcome()).isEqualTo(Outcome.NO_CHECK);
        assertThat(hasty.spoiledBy())
                .containsExactly(
                        SpoiledBy.SETTLED_TOO_SHORT, SpoiledBy.HELD_TOO_SHORT, SpoiledBy.TEMPERATURE_CHANGED_TOO_MUCH);
        assertThat(hasty.temperatureChange_K()).isCloseTo(12 / 1.8, within(1e-9));
        assertThat(hasty.drop().toPsi()).isPositive();
    }

    @Test
    void tenDegreesAreTooMuchAndExactlyAnHourIsEnough() {
        TimedLeakCheck check = judge(reads(5, 1800, 70), reads(65, 1800, 80.0001));
        assertThat(check.spoiledBy()).containsExactly(SpoiledBy.TEMPERATURE_CHANGED_TOO_MUCH);
    }

    @Test
    void aRiseThatCannotBeIsNoCheck() {
        TimedLeakCheck check = judge(reads(5, 1800, 70), reads(65, 1880, 70));
        assertThat(check.spoiledBy()).containsExactly(SpoiledBy.READS_HIGHER_THAN_POSSIBLE);
    }

    @Test
    void aGaugeTooCoarseForTheLimitIsNoCheck() {
        Gauge coarse = Gauge.of("G", GaugeScale.of(6000, 200, PressureUnit.PSI), new GaugeAccuracy.OfFullScale(4));
        ContentsMeasurement first =
                Given.accepted(Given.CHECK.check(reads(5, 1800, 70).reading(), bottle, coarse));
        ContentsMeasurement second =
                Given.accepted(Given.CHECK.check(reads(65, 1800, 70).reading(), bottle, coarse));
        assertThat(judge(first, second).spoiledBy()).containsExactly(SpoiledBy.GAUGE_TOO_COARSE);
    }
}
