package org.lowfirst.gas;

import java.util.Locale;

/**
 * Writes quantities for people, no finer than they can be read off: pressure to 1 bar, 10 psi, 100 kPa or 0.1 MPa, free gas to
 * 10 L or 1 cu ft, temperature to 1 degree. Immutable and thread-safe.
 *
 * <p>Thousands are set apart by a comma where the locale writes a decimal point, by a narrow space where it writes a decimal
 * comma, so that {@link Quantities} reads back what is written here.
 */
public final class QuantityFormat {

    private final Digits digits;

    private QuantityFormat(Digits digits) {
        this.digits = digits;
    }

    public static QuantityFormat of(Locale locale) {
        return new QuantityFormat(Digits.in(locale));
    }

    /** "2,020 psi", "151 bar"; gauge. */
    public String pressure(GaugePressure pressure, PressureUnit unit) {
        return number(pressure.to(unit), step(unit)) + " " + unit.symbol();
    }

    /** "2,020 psi abs"; absolute. */
    public String pressure(AbsolutePressure pressure, PressureUnit unit) {
        return number(pressure.to(unit), step(unit)) + " " + unit.symbol() + " abs";
    }

    /** "70 F", "-5 C". */
    public String temperature(Temperature temperature, TemperatureUnit unit) {
        return number(temperature.to(unit), 1.0) + " " + unit.symbol();
    }

    /** The volume of a cylinder: "2.9 L", "0.10 cu ft". */
    public String waterVolume(Volume volume, VolumeUnit unit) {
        double step = switch (unit) {
            case LITRE -> 0.1;
            case CUBIC_FOOT -> 0.01;
            case CUBIC_INCH -> 1.0;
            case CUBIC_METRE -> 0.0001;
        };
        return number(volume.to(unit), step) + " " + unit.symbol();
    }

    /** Gas at a reference condition that the text around names: "1,740 L", "61 cu ft". */
    public String freeVolume(Volume volume, VolumeUnit unit) {
        double step = switch (unit) {
            case LITRE -> 10.0;
            case CUBIC_FOOT -> 1.0;
            case CUBIC_INCH -> 100.0;
            case CUBIC_METRE -> 0.01;
        };
        return number(volume.to(unit), step) + " " + unit.symbol();
    }

    private static double step(PressureUnit unit) {
        return switch (unit) {
            case PSI -> 10.0;
            case BAR -> 1.0;
            case KILOPASCAL -> 100.0;
            case MEGAPASCAL -> 0.1;
        };
    }

    private String number(double value, double step) {
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        return digits.of(Math.rint(value / step) * step, decimals);
    }
}
