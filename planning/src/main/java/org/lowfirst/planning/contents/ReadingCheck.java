package org.lowfirst.planning.contents;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.ContentsMeasurement.GaugeErrors;
import org.lowfirst.planning.contents.ReadingOutcome.Accepted;
import org.lowfirst.planning.contents.ReadingOutcome.ReadingAdvice;
import org.lowfirst.planning.contents.ReadingOutcome.Refused;
import org.lowfirst.planning.contents.ReadingOutcome.Rule;

/** Turns a reading into an amount of gas with its uncertainty, or says why not. */
public final class ReadingCheck {

    /** Steps of the central differences for the slopes: small against what matters, large against rounding. */
    private static final double STEP_SHARE_OF_PRESSURE = 1e-3;

    private static final double STEP_K = 0.1;

    private final Surroundings surroundings;
    private final ContentsAssumptions assumptions;

    public ReadingCheck(Surroundings surroundings, ContentsAssumptions assumptions) {
        this.surroundings = surroundings;
        this.assumptions = assumptions;
    }

    /**
     * @param reading what was read
     * @param cylinder the cylinder it was read on
     * @param gauge the gauge it was read from
     */
    public ReadingOutcome check(GaugeReading reading, MeteredCylinder cylinder, Gauge gauge) {
        Refused broken = brokenRule(reading, gauge);
        return broken == null ? measure(reading, cylinder, gauge) : broken;
    }

    /** As {@link #check}, and not before {@code earliest}. */
    public ReadingOutcome checkAfter(Instant earliest, GaugeReading reading, MeteredCylinder cylinder, Gauge gauge) {
        if (reading.at().isBefore(earliest)) {
            return new Refused(
                    reading,
                    Rule.TIME_GOES_BACK,
                    reading.at().getEpochSecond(),
                    earliest.getEpochSecond(),
                    "s since 1970",
                    ReadingAdvice.CHECK_THE_CLOCK);
        }
        return check(reading, cylinder, gauge);
    }

    /**
     * As {@link #check}, for a bottle that is being filled: it must not read less than before by more than the gauge can
     * scatter (three standard deviations of the difference).
     */
    public ReadingOutcome checkRising(
            GaugeReading before, GaugeReading reading, MeteredCylinder cylinder, Gauge gauge) {
        double allowed_Pa = 3.0 * Math.sqrt(2.0) * gauge.repeat_Pa(assumptions.gauges());
        double lowest_Pa = before.shown().pascals() - allowed_Pa;
        if (reading.shown().pascals() < lowest_Pa) {
            return refuse(
                    reading, gauge, Rule.FALLS_WHILE_FILLING, lowest_Pa, ReadingAdvice.CHECK_VALVES_AND_CONNECTIONS);
        }
        return checkAfter(before.at(), reading, cylinder, gauge);
    }

    private @Nullable Refused brokenRule(GaugeReading reading, Gauge gauge) {
        GaugePressure shown = reading.shown();
        GaugePressure fullScale = gauge.scale().fullScale();
        if (shown.compareTo(fullScale) > 0) {
            return refuse(
                    reading,
                    gauge,
                    Rule.ABOVE_FULL_SCALE,
                    fullScale.pascals(),
                    ReadingAdvice.USE_A_GAUGE_WITH_A_LARGER_SCALE);
        }
        if (shown.compareTo(GaugePressure.ZERO) < 0) {
            return refuse(reading, gauge, Rule.BELOW_ZERO, 0.0, ReadingAdvice.CHECK_THAT_THE_GAUGE_RESTS_AT_ZERO);
        }
        TemperatureRange range = assumptions.temperatures().range();
        Temperature gas = reading.temperature().value();
        if (gas.compareTo(range.lowest()) < 0) {
            return refuseTemperature(reading, Rule.TEMPERATURE_TOO_LOW, range.lowest());
        }
        return gas.compareTo(range.highest()) > 0
                ? refuseTemperature(reading, Rule.TEMPERATURE_TOO_HIGH, range.highest())
                : null;
    }

    private static Refused refuse(GaugeReading reading, Gauge gauge, Rule rule, double limit_Pa, ReadingAdvice advice) {
        return new Refused(
                reading,
                rule,
                reading.shown().to(gauge.scale().unit()),
                gauge.scale().unit().fromPascals(limit_Pa),
                gauge.scale().unit().symbol(),
                advice);
    }

    private static Refused refuseTemperature(GaugeReading reading, Rule rule, Temperature limit) {
        return new Refused(
                reading,
                rule,
                reading.temperature().value().toCelsius(),
                limit.toCelsius(),
                "C",
                ReadingAdvice.CHECK_NUMBER_AND_UNIT);
    }

    private ReadingOutcome measure(GaugeReading reading, MeteredCylinder cylinder, Gauge gauge) {
        double p_Pa = reading.shown().pascals() + surroundings.ambient().pascals();
        double T_K = reading.temperature().value().kelvin();
        double dp_Pa = STEP_SHARE_OF_PRESSURE * p_Pa;
        Evaluated<Slopes> slopes = density(p_Pa, T_K)
                .then(mid -> density(p_Pa + dp_Pa, T_K)
                        .then(denser -> density(p_Pa, T_K + STEP_K)
                                .then(warmer -> density(p_Pa, T_K - STEP_K)
                                        .map(colder -> new Slopes(
                                                mid, (denser - mid) / dp_Pa, (warmer - colder) / (2.0 * STEP_K))))));
        if (slopes instanceof Evaluated.Value<Slopes> found) {
            double V_m3 = cylinder.waterVolume().cubicMetres();
            Slopes s = found.value();
            double amount_mol = V_m3 * (s.rho() - s.perPascal() * gauge.expectedOffset_Pa());
            return new Accepted(new ContentsMeasurement(
                    reading, amount_mol, V_m3 * s.perPascal(), V_m3 * s.perKelvin(), errors(reading, gauge)));
        }
        return outsideEquation(reading, slopes);
    }

    private static ReadingOutcome outsideEquation(GaugeReading reading, Evaluated<Slopes> none) {
        if (none instanceof Evaluated.OutOfRange<Slopes> out) {
            double limit = out.measured() > out.highest() ? out.highest() : out.lowest();
            return new Refused(
                    reading,
                    Rule.OUTSIDE_GAS_EQUATION,
                    out.measured(),
                    limit,
                    out.unit(),
                    ReadingAdvice.CHECK_NUMBER_AND_UNIT);
        }
        throw new AssertionError("The gas equation has no density in its own range: " + none);
    }

    private Evaluated<Double> density(double p_Pa, double T_K) {
        return surroundings
                .gas()
                .density(new AbsolutePressure(p_Pa), new Temperature(T_K))
                .map(rho -> rho.molesPerCubicMetre());
    }

    private GaugeErrors errors(GaugeReading reading, Gauge gauge) {
        GaugeAssumptions a = assumptions.gauges();
        return new GaugeErrors(
                gauge.offset_Pa(reading.at(), a),
                gauge.repeat_Pa(a),
                gauge.slope(a),
                gauge.limit().pascals());
    }

    private record Slopes(double rho, double perPascal, double perKelvin) {}
}
