package org.lowfirst.station.due;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Due items as a calendar file (RFC 5545): one all-day event on the last good day of each. The id of an event stays the same
 * while its day moves, so a calendar that reads the file again moves the event.
 */
public final class CalendarText {

    /** Media type to serve it with (RFC 5545, 8.1). */
    public static final String MEDIA_TYPE = "text/calendar; charset=utf-8";

    private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private CalendarText() {}

    /**
     * Writes a calendar file.
     *
     * @param stamp moment it is made, for DTSTAMP
     */
    public static String write(CalendarFeed feed, List<DueItem> items, DueWords words, Instant stamp) {
        CalendarLines lines = new CalendarLines();
        lines.line("BEGIN", "VCALENDAR")
                .line("VERSION", "2.0")
                .line("PRODID", "-//Lowfirst//Due list//EN")
                .line("CALSCALE", "GREGORIAN")
                .text("NAME", feed.name())
                .text("X-WR-CALNAME", feed.name())
                .line("REFRESH-INTERVAL;VALUE=DURATION", "P1D");
        Map<String, Integer> used = new HashMap<>();
        for (DueItem item : items) {
            event(lines, feed, item, words, stamp, uid(item, used) + "@" + feed.domain());
        }
        if (items.isEmpty()) {
            timeZone(lines);
        }
        return lines.line("END", "VCALENDAR").toString();
    }

    private static void event(
            CalendarLines lines, CalendarFeed feed, DueItem item, DueWords words, Instant stamp, String uid) {
        String summary = words.summary(item);
        String description = words.description(item);
        lines.line("BEGIN", "VEVENT")
                .text("UID", uid)
                .line("DTSTAMP", STAMP.format(stamp))
                .line("DTSTART;VALUE=DATE", DAY.format(item.lastDay()))
                .text("SUMMARY", summary)
                .line("TRANSP", "TRANSPARENT");
        if (!description.isEmpty()) {
            lines.text("DESCRIPTION", description);
        }
        if (feed.alarmDays() > 0) {
            lines.line("BEGIN", "VALARM")
                    .line("ACTION", "DISPLAY")
                    .text("DESCRIPTION", summary)
                    .line("TRIGGER;RELATED=START", "-P" + feed.alarmDays() + "D")
                    .line("END", "VALARM");
        }
        lines.line("END", "VEVENT");
    }

    /** RFC 5545 (3.6) asks for at least one component in every calendar. */
    private static void timeZone(CalendarLines lines) {
        lines.line("BEGIN", "VTIMEZONE")
                .line("TZID", "Etc/UTC")
                .line("BEGIN", "STANDARD")
                .line("DTSTART", "19700101T000000")
                .line("TZOFFSETFROM", "+0000")
                .line("TZOFFSETTO", "+0000")
                .line("END", "STANDARD")
                .line("END", "VTIMEZONE");
    }

    /** Kind and subject, and a number where a subject has two of a kind. */
    private static String uid(DueItem item, Map<String, Integer> used) {
        String plain = item.kind().name().toLowerCase(Locale.ROOT).replace('_', '-') + "." + coded(item.subject());
        int number = used.merge(plain, 1, Integer::sum);
        return number == 1 ? plain : plain + "." + number;
    }

    /** Letters, digits and hyphens as they are, every other octet as an underscore and two hex digits. */
    private static String coded(String subject) {
        StringBuilder coded = new StringBuilder();
        for (byte octet : subject.getBytes(StandardCharsets.UTF_8)) {
            char c = (char) (octet & 0xFF);
            boolean plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
            coded.append(plain ? String.valueOf(c) : String.format(Locale.ROOT, "_%02x", octet & 0xFF));
        }
        return coded.toString();
    }
}
