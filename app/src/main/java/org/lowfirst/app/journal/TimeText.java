package org.lowfirst.app.journal;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Times as the journal writes them: UTC to the millisecond, always like 2026-06-14T10:05:00.000Z. Read by hand, because a long
 * journal holds millions of them; the general parser takes ten times as long.
 */
final class TimeText {

    private static final DateTimeFormatter FORMAT = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private static final String MARKS = "....-..-..T..:..:......Z";
    private static final int NANOS_PER_MILLI = 1_000_000;

    private TimeText() {}

    static String write(Instant instant) {
        return FORMAT.format(instant);
    }

    /** @throws DateTimeException when the text is not such a time */
    static Instant parse(String text) {
        if (text.length() != MARKS.length() || text.charAt(19) != '.') {
            throw new DateTimeException("not a time of the journal: " + text);
        }
        for (int i = 0; i < MARKS.length(); i++) {
            char mark = MARKS.charAt(i);
            if (mark != '.' && text.charAt(i) != mark) {
                throw new DateTimeException("not a time of the journal: " + text);
            }
        }
        LocalDate date = LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10));
        LocalTime time = LocalTime.of(
                number(text, 11, 13),
                number(text, 14, 16),
                number(text, 17, 19),
                number(text, 20, 23) * NANOS_PER_MILLI);
        return date.atTime(time).toInstant(ZoneOffset.UTC);
    }

    private static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                throw new DateTimeException("not a time of the journal: " + text);
            }
            number = 10 * number + (c - '0');
        }
        return number;
    }
}
