package org.lowfirst.web.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Pressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Quantities;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Units;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.words.Words;

/**
 * Reads the fields of one form in the units of a bench; another unit may be typed behind the number. Whatever cannot be read
 * becomes a fault of its field; what was typed stays. Not thread-safe.
 */
public final class Reader {

    private final Units units;
    private final Words words;
    private Form form;

    public Reader(Map<String, String> typed, Units units, Words words) {
        this.form = Form.with(typed);
        this.units = units;
        this.words = words;
    }

    /** The form so far, with every fault found. */
    public Form form() {
        return form;
    }

    public void fault(String field, String sentence) {
        form = form.faulting(field, sentence);
    }

    /** Text of a field, stripped; empty when nothing was typed. */
    public String text(String field) {
        return form.value(field).strip();
    }

    public boolean empty(String field) {
        return text(field).isEmpty();
    }

    /** Text that must be there. */
    public String required(String field, String faultKey) {
        if (empty(field)) {
            fault(field, words.of(faultKey));
        }
        return text(field);
    }

    /** A gauge pressure, zero or more, or null when it could not be read. */
    public @Nullable StatedPressure pressure(String field) {
        String symbol = units.pressure().symbol();
        if (empty(field)) {
            fault(field, words.of("fault.pressure.empty", symbol));
            return null;
        }
        @Nullable StatedPressure pressure = gauge(field);
        if (pressure == null) {
            return null;
        }
        Optional<String> unlikely = Plausible.pressure(pressure, words);
        unlikely.ifPresent(sentence -> fault(field, sentence));
        return unlikely.isPresent() ? null : pressure;
    }

    private @Nullable StatedPressure gauge(String field) {
        Parsed.Read<Pressure> read =
                read(field, Quantities.pressure(withUnit(field, units.pressure().symbol())));
        if (read == null) {
            return null;
        }
        if (!(read.value() instanceof GaugePressure)) {
            fault(field, words.of("fault.pressure.absolute", text(field)));
            return null;
        }
        return new StatedPressure(number(read), unitOfPressure(read.unit()));
    }

    /** A number of a dial, such as its full scale, or null when it could not be read; null without a fault when nothing was typed. */
    public @Nullable StatedPressure dialIfTyped(String field) {
        return empty(field) ? null : gauge(field);
    }

    /** The same, or null without a fault when nothing was typed. */
    public @Nullable StatedPressure pressureIfTyped(String field) {
        return empty(field) ? null : pressure(field);
    }

    /** A temperature, or null when nothing was typed or it could not be read. */
    public @Nullable StatedTemperature temperatureIfTyped(String field) {
        @Nullable StatedTemperature temperature = gasTemperatureIfTyped(field);
        if (temperature != null && !Plausible.temperature(temperature.temperature())) {
            fault(field, words.of("fault.temperature.range", text(field)));
            return null;
        }
        return temperature;
    }

    /** The same for gas or a wall, which get warmer than any bench; what is too warm to be computed is not refused here. */
    public @Nullable StatedTemperature gasTemperatureIfTyped(String field) {
        if (empty(field)) {
            return null;
        }
        String symbol = units.temperature().symbol();
        Parsed.Read<Temperature> read = read(field, Quantities.temperature(withUnit(field, symbol)));
        return read == null ? null : new StatedTemperature(number(read), unitOfTemperature(read.unit()));
    }

    /** A mass above zero, in kilograms or pounds as the bench's units go, or null when nothing was typed or it could not be read. */
    public @Nullable Mass massIfTyped(String field) {
        if (empty(field)) {
            return null;
        }
        String usual = units.volume() == VolumeUnit.CUBIC_FOOT ? "lb" : "kg";
        Parsed.Read<Mass> read = read(field, Quantities.mass(withUnit(field, usual)));
        if (read != null && !Plausible.emptyMass(read.value())) {
            fault(field, words.of("fault.mass", text(field)));
            return null;
        }
        return read == null ? null : read.value();
    }

    /** A plain number of zero or more, or null when nothing was typed or it could not be read. */
    public @Nullable BigDecimal numberIfTyped(String field) {
        String text = text(field).replace(',', '.');
        if (text.isEmpty()) {
            return null;
        }
        if (text.matches("-[0-9.]*[0-9]")) {
            fault(field, words.of("fault.number.negative", text(field)));
            return null;
        }
        if (text(field).matches("[1-9][0-9]{0,2},[0-9]{3}")) {
            fault(field, words.of("fault.number.two-ways", text(field)));
            return null;
        }
        if (!text.matches("[0-9]{0,6}\\.?[0-9]{1,6}|[0-9]{1,6}\\.")) {
            fault(field, words.of(wrong(text), text(field)));
            return null;
        }
        return new BigDecimal(text);
    }

    private static String wrong(String number) {
        if (number.matches("[-\u2212][0-9]*\\.?[0-9]+")) {
            return "fault.number.below";
        }
        return number.matches("[0-9]*\\.?[0-9]+") ? "fault.number.long" : "fault.number";
    }

    /** A day such as 2026-03-14, or null when nothing was typed or it could not be read. */
    public @Nullable LocalDate dayIfTyped(String field) {
        if (empty(field)) {
            return null;
        }
        try {
            return LocalDate.parse(text(field));
        } catch (DateTimeParseException unreadable) {
            fault(field, words.of("fault.day", text(field)));
            return null;
        }
    }

    /** A water volume above zero, in litres unless another unit is typed, or null when it could not be read. */
    public @Nullable StatedVolume waterVolume(String field) {
        if (empty(field)) {
            fault(field, words.of("fault.volume.empty"));
            return null;
        }
        Parsed.Read<Volume> read = read(field, Quantities.volume(withUnit(field, "L")));
        if (read == null) {
            return null;
        }
        if (!Plausible.waterVolume(read.value())) {
            fault(field, words.of("fault.volume.range", text(field)));
            return null;
        }
        return new StatedVolume(number(read), unitOfVolume(read.unit()));
    }

    /** A small volume such as that of a hose, zero when nothing was typed, or null when it could not be read. */
    public @Nullable StatedVolume volumeOrZero(String field, VolumeUnit usual) {
        if (empty(field)) {
            return new StatedVolume(BigDecimal.ZERO, usual);
        }
        Parsed.Read<Volume> read = read(field, Quantities.volume(withUnit(field, usual.symbol())));
        return read == null ? null : new StatedVolume(number(read), unitOfVolume(read.unit()));
    }

    /** The number as typed, without needless zeros. */
    private static BigDecimal number(Parsed.Read<?> read) {
        return new BigDecimal(Figures.plain(BigDecimal.valueOf(read.number())));
    }

    private <T> Parsed.@Nullable Read<T> read(String field, Parsed<T> parsed) {
        if (parsed instanceof Parsed.Read<T> read) {
            return read;
        }
        fault(field, ((Parsed.Unreadable<T>) parsed).problem());
        return null;
    }

    /** What was typed, with the bench's unit behind it when no letter says otherwise. */
    private String withUnit(String field, String symbol) {
        String text = text(field);
        return text.chars().anyMatch(Character::isLetter) ? text : text + " " + symbol;
    }

    private static PressureUnit unitOfPressure(String symbol) {
        for (PressureUnit unit : PressureUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new AssertionError("no pressure unit " + symbol);
    }

    private static TemperatureUnit unitOfTemperature(String symbol) {
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new AssertionError("no temperature unit " + symbol);
    }

    private static VolumeUnit unitOfVolume(String symbol) {
        for (VolumeUnit unit : VolumeUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new AssertionError("no volume unit " + symbol);
    }
}
