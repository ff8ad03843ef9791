package org.lowfirst.station;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/** What a gauge can have shown. */
final class ReadingRules {

    /** A reading that far from the one before, either way, is looked at twice (common practice, no source). */
    private static final double FAR = 4.0;

    /** How near to the one before it must come in another unit to be taken for a wrong unit (common practice, no source). */
    private static final double NEAR = 0.15;

    /** A reading in kPa below this part of the marking may be one in bar (common practice, no source). */
    private static final double NEXT_TO_NOTHING = 0.02;

    /** As bar it would be more than this part of the marking. */
    private static final double USUAL = 0.1;

    private ReadingRules() {}

    /**
     * @param name of the cylinder
     * @param service its marked service pressure
     * @param before its reading before this one, null when there is none
     */
    static @Nullable Refused check(
            String name,
            Reading reading,
            StatedPressure service,
            @Nullable StatedPressure before,
            RuleFigures figures,
            Circumstances circumstances) {
        StatedPressure measured = reading.pressure();
        Refused below = notBelowZero(name, reading);
        if (below != null) {
            return below;
        }
        StatedPressure test = testPressure(service, figures);
        if (measured.compareTo(test) > 0) {
            return new Refused(Rule.READING_ABOVE_TEST_PRESSURE, name, measured, test);
        }
        if (before != null && !circumstances.confirmed() && looksLikeOtherUnit(measured, before)) {
            return new Refused(Rule.READING_LOOKS_LIKE_OTHER_UNIT, name, measured, before);
        }
        if (!circumstances.confirmed() && looksLikeBar(measured, service)) {
            return new Refused(Rule.READING_LOOKS_LIKE_BAR, name, measured, service);
        }
        return temperature(name, reading.temperature(), figures);
    }

    static @Nullable Refused notBelowZero(String name, Reading reading) {
        StatedPressure measured = reading.pressure();
        return measured.value().signum() < 0
                ? new Refused(
                        Rule.READING_BELOW_ZERO, name, measured, new StatedPressure(BigDecimal.ZERO, measured.unit()))
                : null;
    }

    /** Gas gets warmer than any bench. */
    static @Nullable Refused gasTemperature(String name, StatedTemperature measured, RuleFigures figures) {
        return temperature(name, measured, figures.lowestTemperature(), figures.highestGasTemperature());
    }

    static @Nullable Refused temperature(String name, StatedTemperature measured, RuleFigures figures) {
        return temperature(name, measured, figures.lowestTemperature(), figures.highestTemperature());
    }

    private static @Nullable Refused temperature(
            String name, StatedTemperature measured, StatedTemperature lowest, StatedTemperature highest) {
        if (measured.temperature().compareTo(lowest.temperature()) < 0) {
            return new Refused(Rule.TEMPERATURE_OUT_OF_RANGE, name, measured, lowest);
        }
        if (measured.temperature().compareTo(highest.temperature()) > 0) {
            return new Refused(Rule.TEMPERATURE_OUT_OF_RANGE, name, measured, highest);
        }
        return null;
    }

    /** Test pressure of a cylinder with this marking, to four digits, in the unit of the marking. */
    static StatedPressure testPressure(StatedPressure service, RuleFigures figures) {
        BigDecimal value = service.value()
                .multiply(BigDecimal.valueOf(figures.testPressureFactor()))
                .round(new MathContext(4, RoundingMode.HALF_UP));
        return new StatedPressure(value.setScale(Math.max(0, value.scale()), RoundingMode.UNNECESSARY), service.unit());
    }

    /** Next to nothing in kPa, yet a usual reading if the gauge shows bar. */
    private static boolean looksLikeBar(StatedPressure measured, StatedPressure service) {
        double marked = service.gauge().pascals();
        double inBar = GaugePressure.of(measured.value().doubleValue(), PressureUnit.BAR)
                .pascals();
        return measured.unit() == PressureUnit.KILOPASCAL
                && measured.gauge().pascals() < NEXT_TO_NOTHING * marked
                && inBar > USUAL * marked;
    }

    private static boolean looksLikeOtherUnit(StatedPressure measured, StatedPressure before) {
        double asTyped = measured.gauge().pascals();
        double expected = before.gauge().pascals();
        if (!(asTyped > 0.0) || !(expected > 0.0) || (asTyped < FAR * expected && asTyped > expected / FAR)) {
            return false;
        }
        for (PressureUnit unit : PressureUnit.values()) {
            double other =
                    GaugePressure.of(measured.value().doubleValue(), unit).pascals();
            if (unit != measured.unit() && Math.abs(other - expected) <= NEAR * expected) {
                return true;
            }
        }
        return false;
    }
}
