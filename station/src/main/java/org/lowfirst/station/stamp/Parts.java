package org.lowfirst.station.stamp;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;

/** Makes parts from matches. */
final class Parts {

    private Parts() {}

    /** One part from the whole match. */
    static List<Part> whole(Matcher match, Meaning meaning, Ambiguity... ambiguities) {
        return List.of(new Part(match.start(), match.end(), match.group(), meaning, List.of(ambiguities)));
    }

    /** One part from a group of the match. */
    static Part group(Matcher match, int group, Meaning meaning, Ambiguity... ambiguities) {
        return new Part(match.start(group), match.end(group), match.group(group), meaning, List.of(ambiguities));
    }

    /** A group in capitals, or empty when it did not take part. */
    static String capitals(Matcher match, int group) {
        String text = match.group(group);
        return text == null ? "" : text.toUpperCase(Locale.ROOT);
    }

    /** A number typed with a point or a comma. */
    static double number(Matcher match, int group) {
        return Double.parseDouble(match.group(group).replace(',', '.'));
    }
}
