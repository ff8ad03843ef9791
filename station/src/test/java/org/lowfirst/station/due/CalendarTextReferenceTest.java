package org.lowfirst.station.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Calendar text against the rules of RFC 5545: content lines 3.1, text 3.3.11, calendar 3.4 and 3.6, event 3.6.1, alarm
 * 3.6.6. The rule of 3.1 and its example were read in quotation; the section numbers and the example of 3.3.11 are from
 * memory.
 */
class CalendarTextReferenceTest {

    private static final Instant STAMP = Instant.parse("2026-06-14T07:05:09Z");
    private static final DueWords WORDS = new DueWords() {
        @Override
        public String summary(DueItem item) {
            return item.subject() + " due";
        }

        @Override
        public String description(DueItem item) {
            return item.source();
        }
    };

    private static String write(DueItem... items) {
        return CalendarText.write(new CalendarFeed("Due, here", "bench.example", 14), List.of(items), WORDS, STAMP);
    }

    private static DueItem item(String subject, String source) {
        return new DueItem(DueKind.CYLINDER_TEST, subject, LocalDate.of(2026, 6, 30), source);
    }

    @Test
    void theReaderOfTheseTestsUnfoldsTheExampleOf3_1() {
        assertThat(ReadCalendar.lines(
                        "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.\r\n"))
                .containsExactly(new ReadCalendar.Line(
                        "DESCRIPTION", "", "This is a long description that exists on a long line."));
    }

    @Test
    void textIsEscapedAsInTheExampleOf3_3_11() {
        assertThat(CalendarLines.escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."))
                .isEqualTo("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
        assertThat(CalendarLines.escaped("a\\b;c,d\r\ne\rf:g\"h")).isEqualTo("a\\\\b\\;c\\,d\\ne\\nf:g\"h");
        assertThat(CalendarLines.escaped("bell\u0007 tab\t")).isEqualTo("bell  tab\t");
    }

    @Test
    void aCalendarHasItsRequiredPropertiesAndEachEventItsOwn() {
        List<ReadCalendar.Line> lines = ReadCalendar.lines(write(item("B-21", "49 CFR")));

        assertThat(lines)
                .containsExactly(
                        new ReadCalendar.Line("BEGIN", "", "VCALENDAR"),
                        new ReadCalendar.Line("VERSION", "", "2.0"),
                        new ReadCalendar.Line("PRODID", "", "-//Lowfirst//Due list//EN"),
                        new ReadCalendar.Line("CALSCALE", "", "GREGORIAN"),
                        new ReadCalendar.Line("NAME", "", "Due\\, here"),
                        new ReadCalendar.Line("X-WR-CALNAME", "", "Due\\, here"),
                        new ReadCalendar.Line("REFRESH-INTERVAL", ";VALUE=DURATION", "P1D"),
                        new ReadCalendar.Line("BEGIN", "", "VEVENT"),
                        new ReadCalendar.Line("UID", "", "cylinder-test.B-21@bench.example"),
                        new ReadCalendar.Line("DTSTAMP", "", "20260614T070509Z"),
                        new ReadCalendar.Line("DTSTART", ";VALUE=DATE", "20260630"),
                        new ReadCalendar.Line("SUMMARY", "", "B-21 due"),
                        new ReadCalendar.Line("TRANSP", "", "TRANSPARENT"),
                        new ReadCalendar.Line("DESCRIPTION", "", "49 CFR"),
                        new ReadCalendar.Line("BEGIN", "", "VALARM"),
                        new ReadCalendar.Line("ACTION", "", "DISPLAY"),
                        new ReadCalendar.Line("DESCRIPTION", "", "B-21 due"),
                        new ReadCalendar.Line("TRIGGER", ";RELATED=START", "-P14D"),
                        new ReadCalendar.Line("END", "", "VALARM"),
                        new ReadCalendar.Line("END", "", "VEVENT"),
                        new ReadCalendar.Line("END", "", "VCALENDAR"));
    }

    @Test
    void anEmptyCalendarStillHasTheOneComponent3_6AsksFor() {
        assertThat(ReadCalendar.values(write(), "BEGIN")).containsExactly("VCALENDAR", "VTIMEZONE", "STANDARD");
    }

    @Test
    void anEventKeepsItsIdWhileItsDayMoves() {
        DueItem before = item("B-21", "x");
        DueItem after = new DueItem(before.kind(), before.subject(), LocalDate.of(2031, 6, 30), "y");

        assertThat(ReadCalendar.values(write(after), "UID")).isEqualTo(ReadCalendar.values(write(before), "UID"));
    }

    @Test
    void noTwoEventsShareAnId() {
        String text =
                write(item("B 21", "a"), item("B_20", "a"), item("B-21", "a"), item("B-21", "b"), item("\u00c4", "a"));

        assertThat(ReadCalendar.values(text, "UID"))
                .doesNotHaveDuplicates()
                .allMatch(uid -> uid.matches("[A-Za-z0-9._-]+@bench.example"));
    }

    /** Whatever people type: at most 75 octets a line, no character split, and the text comes back. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyTextIsFoldedAndComesBackWhole(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            String typed = typed(random);
            String text = write(item("B-21", typed));

            for (String line : text.split("\r\n")) {
                byte[] octets = line.getBytes(StandardCharsets.UTF_8);
                assertThat(octets.length).isLessThanOrEqualTo(75);
                assertThat(new String(octets, StandardCharsets.UTF_8)).isEqualTo(line);
            }
            if (!typed.isEmpty()) {
                assertThat(ReadCalendar.unescaped(
                                ReadCalendar.values(text, "DESCRIPTION").get(0)))
                        .isEqualTo(typed);
            }
        }
    }

    private static String typed(Random random) {
        int[] alphabet = {'a', 'Z', '0', ' ', ',', ';', '\\', '\n', ':', '"', 0xE4, 0x20AC, 0x1F4A8, 0x65E5, '\t'};
        StringBuilder typed = new StringBuilder();
        int length = random.nextInt(160);
        for (int i = 0; i < length; i++) {
            typed.appendCodePoint(alphabet[random.nextInt(alphabet.length)]);
        }
        return typed.toString();
    }

    @Test
    void linesOf75OctetsAreNotFoldedAndOf76Are() {
        assertThat(new CalendarLines().line("N", "x".repeat(73)).toString()).isEqualTo("N:" + "x".repeat(73) + "\r\n");
        assertThat(new CalendarLines().line("N", "x".repeat(74)).toString())
                .isEqualTo("N:" + "x".repeat(73) + "\r\n x\r\n");
        assertThat(new CalendarLines().line("N", "x".repeat(72) + "\u00e4").toString())
                .isEqualTo("N:" + "x".repeat(72) + "\r\n \u00e4\r\n");
    }
}
