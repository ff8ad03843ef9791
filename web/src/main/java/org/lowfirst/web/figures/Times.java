package org.lowfirst.web.figures;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import org.lowfirst.web.words.Words;

/**
 * Writes times and ages.
 *
 * @param zone where the bench stands
 */
public record Times(Words words, ZoneId zone) {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** How long ago, e.g. "5 min ago", "yesterday 17:40". */
    public String age(Instant then, Instant now) {
        Duration gone = Duration.between(then, now);
        if (gone.toMinutes() < 1) {
            return words.of("age.now");
        }
        if (gone.toMinutes() < 60) {
            return words.of("age.minutes", gone.toMinutes());
        }
        ZonedDateTime at = then.atZone(zone);
        LocalDate today = now.atZone(zone).toLocalDate();
        long days = ChronoUnit.DAYS.between(at.toLocalDate(), today);
        if (days == 0) {
            return words.of("age.today", CLOCK.format(at));
        }
        return days == 1
                ? words.of("age.yesterday", CLOCK.format(at))
                : words.of("age.days", days, formatted("date.short", at));
    }

    /** A day, e.g. "31 May 2027". */
    public String day(LocalDate day) {
        return formatted("date.day", day);
    }

    private String formatted(String pattern, TemporalAccessor day) {
        return DateTimeFormatter.ofPattern(words.of(pattern), words.locale()).format(day);
    }

    /** Time of day, e.g. "10:05". */
    public String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }

    /** Date and time, e.g. "25 Nov 2026 10:05". */
    public String full(Instant at) {
        return formatted("date.full", at.atZone(zone));
    }
}
