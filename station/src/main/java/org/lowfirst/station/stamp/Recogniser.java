package org.lowfirst.station.stamp;

import java.util.List;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Knows one shape of mark.
 *
 * @param pattern what it looks like, from the place reading has come to
 * @param meaning makes the parts of a match; an empty list says "not this after all"
 */
record Recogniser(Pattern pattern, BiFunction<Matcher, Seen, List<Part>> meaning) {

    /** What ends a mark: a space, a separator or the end of the line. */
    static final String END = "(?=[\\s;,|+*\\u2605\\u2606]|/[\\sA-Z]|$)";

    static Recogniser of(String shape, BiFunction<Matcher, Seen, List<Part>> meaning) {
        return new Recogniser(Pattern.compile(shape + END, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE), meaning);
    }

    List<Part> at(String line, int place, Seen seen) {
        Matcher matcher = pattern.matcher(line);
        matcher.region(place, line.length());
        matcher.useTransparentBounds(true);
        return matcher.lookingAt() ? meaning.apply(matcher, seen) : List.of();
    }
}
