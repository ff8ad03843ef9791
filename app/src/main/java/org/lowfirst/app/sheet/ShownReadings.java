package org.lowfirst.app.sheet;

import java.util.Locale;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/**
 * Readings as a person at a gauge wants them: what was typed as typed, what is expected to the step a gauge can be read, and a
 * limit never rounded up.
 */
public final class ShownReadings {

    private final PressureUnit unit;

    public ShownReadings(PressureUnit unit) {
        this.unit = unit;
    }

    public String symbol() {
        return unit.symbol();
    }

    /** An expected reading, to 1 bar, 10 psi, 100 kPa or 0.1 MPa. */
    public String expected(GaugePressure reading) {
        double step = expectedStep();
        return number(Math.rint(reading.to(unit) / step) * step, unit == PressureUnit.MEGAPASCAL ? 1 : 0);
    }

    /** A reading that was given, with at most one digit after the point (two in MPa). */
    public String given(GaugePressure reading) {
        int most = unit == PressureUnit.MEGAPASCAL ? 2 : 1;
        String text = number(reading.to(unit), most);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }

    /** A reading as {@link #given} when it looks typed, else as {@link #expected}. */
    public String found(GaugePressure reading) {
        double tenths = reading.to(unit) * (unit == PressureUnit.MEGAPASCAL ? 100.0 : 10.0);
        return Math.abs(tenths - Math.rint(tenths)) < 1e-6 ? given(reading) : expected(reading);
    }

    /** A limit, rounded down to 1 bar, 1 psi, 10 kPa or 0.01 MPa. */
    public String limit(GaugePressure reading) {
        double step = limitStep();
        double shown = Math.floor(reading.to(unit) / step + 1e-6) * step;
        return number(shown, unit == PressureUnit.MEGAPASCAL ? 2 : 0);
    }

    /** The least reading that will do, rounded up to a step of {@link #expected}. */
    public String atLeast(GaugePressure reading) {
        double step = expectedStep();
        return number(Math.ceil(reading.to(unit) / step - 1e-6) * step, unit == PressureUnit.MEGAPASCAL ? 1 : 0);
    }

    public String withUnit(String number) {
        return number + " " + unit.symbol();
    }

    private double expectedStep() {
        return switch (unit) {
            case PSI -> 10.0;
            case BAR -> 1.0;
            case KILOPASCAL -> 100.0;
            case MEGAPASCAL -> 0.1;
        };
    }

    private double limitStep() {
        return switch (unit) {
            case PSI, BAR -> 1.0;
            case KILOPASCAL -> 10.0;
            case MEGAPASCAL -> 0.01;
        };
    }

    private static String number(double value, int digits) {
        String text = String.format(Locale.ROOT, "%,." + digits + "f", value);
        return text.startsWith("-0") && text.matches("-0[.0]*") ? text.substring(1) : text;
    }
}
