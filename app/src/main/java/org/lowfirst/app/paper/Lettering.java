package org.lowfirst.app.paper;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.QuantityFormat;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Standing;
import org.lowfirst.station.StatedQuantity;
import org.lowfirst.station.charges.Money;

/** Words, figures and times as papers show them in one language. Immutable. */
final class Lettering {

    private static final int HASH_GROUP = 8;

    private final Wording wording;
    private final Locale locale;
    private final ZoneId zone;
    private final QuantityFormat format;

    Lettering(Locale locale, ZoneId zone) {
        this.wording = Wording.of(Lettering.class, locale);
        this.locale = locale;
        this.zone = zone;
        this.format = QuantityFormat.of(locale);
    }

    Locale locale() {
        return locale;
    }

    String of(String key) {
        return wording.text(key, Map.of());
    }

    String of(String key, String name, String value) {
        return wording.text(key, Map.of(name, value));
    }

    String of(String key, Map<String, String> values) {
        return wording.text(key, values);
    }

    /** A pressure worked out, no finer than it can be read off. */
    String pressure(GaugePressure pressure, PressureUnit unit) {
        return format.pressure(pressure, unit);
    }

    /** The same without its unit. */
    String pressureBare(GaugePressure pressure, PressureUnit unit) {
        String text = pressure(pressure, unit);
        return text.substring(0, text.length() - unit.symbol().length() - 1);
    }

    /** What was typed, with its unit. */
    String asTyped(StatedQuantity quantity) {
        return number(quantity.value()) + " " + quantity.symbol();
    }

    /** What a gauge showed; a dash when nobody read it. */
    String asRead(@Nullable Reading reading) {
        return reading == null ? of("unread") : asTyped(reading.pressure());
    }

    /** The temperature of a reading; marked when nobody read a thermometer. */
    String temperature(Reading reading) {
        String typed = asTyped(reading.temperature());
        return reading.temperatureAssumed() ? of("temperature.assumed", "temperature", typed) : typed;
    }

    /** When a supply is opened, and why not by its rank. */
    String standing(Standing standing) {
        String key =
                "standing." + standing.turn().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return of(key, "reason", standing.reason());
    }

    String money(Money money) {
        return separated(money.amount().toPlainString())
                + " "
                + money.currency().getCurrencyCode();
    }

    String number(BigDecimal value) {
        return Digits.in(locale).plain(value);
    }

    String full(Instant at) {
        return time("format.full").format(at.atZone(zone));
    }

    String clock(Instant at) {
        return time("format.clock").format(at.atZone(zone));
    }

    String day(LocalDate day) {
        return time("format.day").format(day);
    }

    String day(Instant at) {
        return day(date(at));
    }

    String month(YearMonth month) {
        return time("format.month").format(month);
    }

    /** The day it is then where the bench stands. */
    LocalDate date(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    /** A hash in groups that can be compared by eye. */
    static String grouped(String hash) {
        return hash.replaceAll("(.{" + HASH_GROUP + "})(?!$)", "$1 ");
    }

    private DateTimeFormatter time(String key) {
        return DateTimeFormatter.ofPattern(of(key), locale);
    }

    private String separated(String plain) {
        return Digits.in(locale).written(plain);
    }
}
