package org.lowfirst.web.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.QuantityFormat;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedQuantity;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Units;

/** Writes quantities in the units of one bench, no finer than they can be read off. Immutable. */
public final class Figures {

    /** How digits are grouped in English. */
    public static final Locale LOCALE = Locale.ENGLISH;

    private final Units units;
    private final QuantityFormat format;
    private final Locale locale;

    /**
     * @param units units of the bench
     * @param locale language the numbers stand in; a decimal comma where it has one
     */
    public Figures(Units units, Locale locale) {
        this.units = units;
        this.format = QuantityFormat.of(locale);
        this.locale = locale;
    }

    /** In English. */
    public Figures(Units units) {
        this(units, Locale.ENGLISH);
    }

    /** A number with digits set apart, e.g. "1,450.5"; a narrow space and a comma where the language has a decimal comma. */
    public String number(double value, int decimals) {
        return number(value, decimals, locale);
    }

    /** The same in any language. */
    public static String number(double value, int decimals, Locale locale) {
        return Digits.in(locale).of(value, decimals);
    }

    /** The same of a number kept exactly, with all its decimals. */
    public static String number(BigDecimal value, Locale locale) {
        return Digits.in(locale).of(value);
    }

    /** Unit of pressure of the bench. */
    public PressureUnit pressureUnitOf() {
        return units.pressure();
    }

    /** Symbol of the unit of pressure, e.g. "bar". */
    public String pressureUnit() {
        return units.pressure().symbol();
    }

    /** Symbol of the unit of temperature, e.g. "C". */
    public String temperatureUnit() {
        return units.temperature().symbol();
    }

    /** A gauge pressure with its unit, e.g. "113 bar". */
    public String pressureWithUnit(GaugePressure pressure) {
        return format.pressure(pressure, units.pressure());
    }

    /** A gauge pressure without its unit, e.g. "113". */
    public String pressure(GaugePressure pressure) {
        String text = pressureWithUnit(pressure);
        return text.substring(0, text.length() - pressureUnit().length() - 1);
    }

    /** A pressure with the digits and unit that were typed, e.g. "112.5 bar". */
    public String asTyped(StatedPressure pressure) {
        return localized(pressure.value()) + " " + pressure.symbol();
    }

    public String temperature(Temperature temperature) {
        return format.temperature(temperature, units.temperature());
    }

    /** A water volume with the digits and unit that were typed, e.g. "4.6 L". */
    public String asTyped(StatedVolume volume) {
        return localized(volume.value()) + " " + volume.symbol();
    }

    /** A volume of free gas, to 10 L or 1 cu ft. */
    public String gas(Volume volume) {
        return format.freeVolume(volume, units.volume());
    }

    /** The number of a gauge pressure as it would be typed into a field: ungrouped. */
    public String toType(GaugePressure pressure) {
        return rounded(pressure, RoundingMode.HALF_EVEN);
    }

    /** The same, rounded down: a target that must be within reach. */
    public String toTypeBelow(GaugePressure pressure) {
        return rounded(pressure, RoundingMode.FLOOR);
    }

    /** Half-width of a spread without its unit, rounded up: never zero. */
    public String within(GaugePressure halfWidth) {
        BigDecimal step = stepOf(units.pressure());
        BigDecimal steps = BigDecimal.valueOf(halfWidth.to(units.pressure())).divide(step, 0, RoundingMode.CEILING);
        return localized(steps.max(BigDecimal.ONE).multiply(step));
    }

    /** A rise of the gauge a minute in the bench's unit, without it: one decimal for bar, whole for psi and kPa. */
    public String rise(double perMinute) {
        return number(perMinute, riseDecimals());
    }

    /** A rise [Pa/s] as it would be typed, in the bench's unit a minute. */
    public String riseToType(double pascalsPerSecond) {
        double perMinute = units.pressure().fromPascals(pascalsPerSecond * 60.0);
        return Digits.in(locale).written(String.format(Locale.ROOT, "%." + riseDecimals() + "f", perMinute));
    }

    private int riseDecimals() {
        return units.pressure() == PressureUnit.BAR ? 1 : 0;
    }

    private String localized(BigDecimal value) {
        return Digits.in(locale).plain(value);
    }

    /** The number of a stated pressure as it would be typed, in the bench's unit; with its own unit when that differs. */
    public String toType(StatedPressure pressure) {
        return pressure.unit() == units.pressure()
                ? localized(pressure.value())
                : localized(pressure.value()) + " " + pressure.symbol();
    }

    /** A number as it would be typed in the language. */
    public String toType(BigDecimal value) {
        return localized(value);
    }

    /** A quantity as it would be typed in the language, with its unit. */
    public String toType(StatedQuantity quantity) {
        return localized(quantity.value()) + " " + quantity.symbol();
    }

    /** A number with the digits it has and a decimal point, without needless zeros or exponent. */
    public static String plain(BigDecimal value) {
        return Digits.in(Locale.ROOT).plain(value);
    }

    private String rounded(GaugePressure pressure, RoundingMode rounding) {
        BigDecimal step = stepOf(units.pressure());
        BigDecimal steps = BigDecimal.valueOf(pressure.to(units.pressure())).divide(step, 0, rounding);
        return localized(steps.multiply(step));
    }

    private static BigDecimal stepOf(PressureUnit unit) {
        return switch (unit) {
            case BAR -> BigDecimal.ONE;
            case PSI -> BigDecimal.TEN;
            case KILOPASCAL -> BigDecimal.valueOf(100);
            case MEGAPASCAL -> BigDecimal.valueOf(1, 1);
        };
    }
}
