package org.lowfirst.app.fitness;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.QuantityFormat;
import org.lowfirst.station.Units;
import org.lowfirst.station.rules.Measure;
import org.lowfirst.station.rules.RuleBook;

/** What a rule measured, written for people in the units of one bench. */
final class MeasureWords {

    /** From two years on nobody counts days. */
    private static final long MANY_DAYS = 730;

    private static final long DAYS_IN_A_YEAR = 365;

    private final Wording words;
    private final Wording codes;
    private final DateTimeFormatter days;
    private final QuantityFormat figures;
    private final Units units;
    private final Locale locale;

    MeasureWords(Locale locale, Units units) {
        this.words = Wording.of(MeasureWords.class, locale);
        this.codes = Wording.of(RuleBook.class, locale);
        this.days = DateTimeFormatter.ofPattern(words.text("format.day", Map.of()), locale);
        this.figures = QuantityFormat.of(locale);
        this.units = units;
        this.locale = locale;
    }

    /** Empty when nothing was measured. */
    String of(Measure measure) {
        if (measure instanceof Measure.Nothing) {
            return "";
        } else if (measure instanceof Measure.OfDate m) {
            return day(m.date());
        } else if (measure instanceof Measure.OfDays m) {
            return Math.abs(m.days()) < MANY_DAYS
                    ? counted("days", m.days())
                    : counted("years", m.days() / DAYS_IN_A_YEAR);
        } else if (measure instanceof Measure.OfFills m) {
            return counted("fills", m.fills());
        } else if (measure instanceof Measure.OfVolume m) {
            return figures.waterVolume(m.volume(), units.volume());
        } else if (measure instanceof Measure.OfPressure m) {
            return pressure(m);
        } else if (measure instanceof Measure.OfWord m) {
            return word(m.word());
        }
        throw new AssertionError("unhandled " + measure);
    }

    String day(LocalDate day) {
        return days.format(day);
    }

    private String counted(String key, long count) {
        return words.text(key + (count == 1 ? ".one" : ".many"), Map.of("count", Long.toString(count)));
    }

    private String pressure(Measure.OfPressure m) {
        String pressure = exact(m.pressure());
        return m.at() == null
                ? pressure
                : words.text(
                        "pressure.at",
                        Map.of("pressure", pressure, "temperature", figures.temperature(m.at(), units.temperature())));
    }

    /** A limit is not rounded to what a gauge can be read to: whole bar and psi. */
    private String exact(GaugePressure pressure) {
        return switch (units.pressure()) {
            case BAR, PSI ->
                Digits.in(locale).of(pressure.to(units.pressure()), 0) + " "
                        + units.pressure().symbol();
            case KILOPASCAL, MEGAPASCAL -> figures.pressure(pressure, units.pressure());
        };
    }

    /** A code of a question, a marking or an answer in words; another mark as it is. */
    String word(String code) {
        for (String group : new String[] {"question.", "marking."}) {
            if (codes.has(group + code)) {
                return codes.text(group + code, Map.of());
            }
        }
        return words.has("answer." + code) ? words.text("answer." + code, Map.of()) : code;
    }
}
