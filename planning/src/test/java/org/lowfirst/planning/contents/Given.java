package org.lowfirst.planning.contents;

import java.time.Instant;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;
import org.lowfirst.planning.contents.ReadingOutcome.Accepted;

/** Short ways to say what the tests start from. */
final class Given {

    static final Surroundings OXYGEN = Surroundings.standard(Oxygen.schmidtWagner());
    static final ContentsAssumptions ASSUMED = ContentsAssumptions.standard();
    static final ReadingCheck CHECK = new ReadingCheck(OXYGEN, ASSUMED);
    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private Given() {}

    /** 0 to 315 bar, class 1.6, read to 1 bar. */
    static Gauge gauge(String name) {
        return Gauge.of(name, GaugeScale.of(315, 1, PressureUnit.BAR), new GaugeAccuracy.OfFullScale(1.6));
    }

    static MeteredCylinder cylinder(String name, double litres) {
        return new MeteredCylinder(name, Volume.ofLitres(litres), VolumeOrigin.STAMPED);
    }

    static Instant day(double days) {
        return START.plusMillis(Math.round(days * 86_400_000.0));
    }

    static GasTemperature measured(double celsius) {
        return GasTemperature.measured(Temperature.ofCelsius(celsius), ASSUMED);
    }

    static GaugeReading reading(double day, String cylinder, String gauge, double bar, GasTemperature temperature) {
        return new GaugeReading(day(day), cylinder, gauge, GaugePressure.ofBar(bar), temperature);
    }

    static ContentsMeasurement measured(
            double day, MeteredCylinder cylinder, Gauge gauge, double bar, GasTemperature temperature) {
        return accepted(CHECK.check(reading(day, cylinder.name(), gauge.name(), bar, temperature), cylinder, gauge));
    }

    static ContentsMeasurement accepted(ReadingOutcome outcome) {
        if (outcome instanceof Accepted accepted) {
            return accepted.measurement();
        }
        throw new AssertionError("refused: " + outcome);
    }

    static double litres15(double moles) {
        return moles
                / OXYGEN.gas()
                        .density(
                                ReferenceCondition.ISO_15C_1ATM.pressure(),
                                ReferenceCondition.ISO_15C_1ATM.temperature())
                        .orElseThrow()
                        .molesPerCubicMetre()
                * 1000.0;
    }
}
