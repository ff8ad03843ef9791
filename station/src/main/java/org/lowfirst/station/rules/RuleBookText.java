package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.util.Map;

/**
 * Books as text: a head of "key = value" lines, then one block for each rule, opened by its id in brackets. Lines starting
 * with "#" and empty lines are skipped. Written text reads back as the same book.
 */
public final class RuleBookText {

    static final String BOOK = "book";
    static final String TITLE = "title";
    static final String KIND = "kind";
    static final String COUNTRY = "country";
    static final String SOURCE = "source";
    static final String STATUS = "status";
    static final String FROM = "from";
    static final String UNTIL = "until";
    static final String OVERRIDE = "override";

    private RuleBookText() {}

    /**
     * @param file name to show when something is wrong
     */
    public static RuleBookReading read(String file, String text) {
        return new RuleBookReader(file, text).read();
    }

    public static String write(RuleBook book) {
        StringBuilder text = new StringBuilder();
        line(text, BOOK, book.id());
        line(text, TITLE, book.title());
        for (FillRule rule : book.rules()) {
            RuleHeading heading = rule.heading();
            text.append("\n[").append(heading.id()).append("]\n");
            line(text, KIND, rule.kind().word());
            line(text, COUNTRY, heading.country());
            line(text, SOURCE, heading.source());
            line(text, STATUS, heading.status().word());
            line(text, FROM, heading.inForce().from().toString());
            LocalDate until = heading.inForce().until();
            if (until != null) {
                line(text, UNTIL, until.toString());
            }
            line(text, OVERRIDE, heading.override().word());
            for (Map.Entry<String, String> setting : rule.settings().entrySet()) {
                line(text, setting.getKey(), setting.getValue());
            }
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String key, String value) {
        text.append(key).append(" = ").append(value).append('\n');
    }
}
