package org.lowfirst.station.due;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads calendar text by the grammar of RFC 5545 (3.1, 3.3.11), written apart from the writer under test. */
final class ReadCalendar {

    /** name *(";" param) ":" value, with the control characters the grammar leaves out. */
    private static final Pattern CONTENT_LINE = Pattern.compile(
            "([A-Z0-9-]+)((?:;[A-Z0-9-]+=(?:[^\\p{Cntrl}\";:,]*|\"[^\\p{Cntrl}\"]*\"))*):([^\\p{Cntrl}]*)");

    private ReadCalendar() {}

    /** One content line. */
    record Line(String name, String parameters, String value) {}

    /** Lines after unfolding; fails where the text breaks the grammar. */
    static List<Line> lines(String text) {
        if (!text.endsWith("\r\n") || text.replace("\r\n", "").matches("(?s).*[\r\n].*")) {
            throw new AssertionError("every line ends in CR LF and neither stands alone");
        }
        List<Line> lines = new ArrayList<>();
        for (String line : text.replaceAll("\r\n[ \t]", "").split("\r\n")) {
            Matcher matcher = CONTENT_LINE.matcher(line.replace('\t', ' '));
            if (!matcher.matches()) {
                throw new AssertionError("no content line: " + line);
            }
            lines.add(new Line(matcher.group(1), matcher.group(2), line.substring(matcher.start(3))));
        }
        return lines;
    }

    static List<String> values(String text, String name) {
        return lines(text).stream()
                .filter(line -> line.name().equals(name))
                .map(Line::value)
                .toList();
    }

    /** Text value without its escapes; fails on one that RFC 5545 does not know. */
    static String unescaped(String value) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == ';' || c == ',') {
                throw new AssertionError("not escaped: " + value);
            }
            if (c == '\\') {
                i++;
                switch (value.charAt(i)) {
                    case 'n', 'N' -> plain.append('\n');
                    case '\\', ';', ',' -> plain.append(value.charAt(i));
                    default -> throw new AssertionError("unknown escape: " + value);
                }
            } else {
                plain.append(c);
            }
        }
        return plain.toString();
    }
}
