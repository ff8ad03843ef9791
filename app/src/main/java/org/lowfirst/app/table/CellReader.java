package org.lowfirst.app.table;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Pressure;
import org.lowfirst.gas.Quantities;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.UnitSymbols;
import org.lowfirst.station.Units;

/** Reads the cells of one row; what cannot be read becomes a fault of its column. Not thread-safe. */
final class CellReader {

    /** Digits whose zeros are kept: what was exported comes back digit by digit. */
    private static final Pattern PLAIN_NUMBER = Pattern.compile("^\\s*([0-9]+(?:\\.[0-9]+)?)(?![0-9.,'\\s]*[0-9])");

    private final Pasted.Row row;
    private final Units units;
    private final Wording wording;
    private final Map<BottleColumn, String> faults = new EnumMap<>(BottleColumn.class);

    CellReader(Pasted.Row row, Units units, Wording wording) {
        this.row = row;
        this.units = units;
        this.wording = wording;
    }

    Map<BottleColumn, String> faults() {
        return faults;
    }

    String text(BottleColumn column) {
        return row.cell(column);
    }

    void fault(BottleColumn column, String key) {
        faults.put(column, wording.text(key, Map.of("typed", text(column))));
    }

    @Nullable
    StatedPressure pressure(BottleColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        Parsed<Pressure> parsed =
                Quantities.pressure(withUnit(text, units.pressure().symbol()));
        if (!(parsed instanceof Parsed.Read<Pressure> read)) {
            faults.put(column, ((Parsed.Unreadable<Pressure>) parsed).problem());
            return null;
        }
        if (!(read.value() instanceof GaugePressure)) {
            fault(column, "cell.absolute");
            return null;
        }
        return new StatedPressure(
                number(text, read.number()),
                UnitSymbols.findPressure(read.unit()).orElseThrow());
    }

    @Nullable
    StatedVolume volume(BottleColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            return null;
        }
        Parsed<Volume> parsed = Quantities.volume(withUnit(text, Cells.VOLUME_UNIT));
        if (!(parsed instanceof Parsed.Read<Volume> read)) {
            faults.put(column, ((Parsed.Unreadable<Volume>) parsed).problem());
            return null;
        }
        return new StatedVolume(
                number(text, read.number()), UnitSymbols.findVolume(read.unit()).orElseThrow());
    }

    /** One of the names of a closed set, or the one for an empty cell. */
    <E extends Enum<E>> @Nullable E choice(BottleColumn column, Class<E> type, @Nullable E ifEmpty, String faultKey) {
        String text = text(column);
        if (text.isEmpty()) {
            return ifEmpty;
        }
        for (E constant : type.getEnumConstants()) {
            if (constant.name().toLowerCase(Locale.ROOT).equals(text.toLowerCase(Locale.ROOT))) {
                return constant;
            }
        }
        fault(column, faultKey);
        return null;
    }

    /** Whether a column says yes; nothing when it says something else than yes, no or nothing. */
    Optional<Boolean> yes(BottleColumn column) {
        return switch (text(column).toLowerCase(Locale.ROOT)) {
            case "", "no", "nein", "n", "0", "false" -> Optional.of(false);
            case "yes", "ja", "y", "j", "x", "1", "true" -> Optional.of(true);
            default -> Optional.empty();
        };
    }

    private static BigDecimal number(String text, double number) {
        Matcher plain = PLAIN_NUMBER.matcher(text);
        if (plain.find()) {
            BigDecimal exact = new BigDecimal(plain.group(1));
            if (exact.doubleValue() == number) {
                return exact;
            }
        }
        BigDecimal read = BigDecimal.valueOf(number).stripTrailingZeros();
        return read.scale() < 0 ? read.setScale(0) : read;
    }

    private static String withUnit(String text, String symbol) {
        return text.chars().anyMatch(Character::isLetter) ? text : text + " " + symbol;
    }
}
