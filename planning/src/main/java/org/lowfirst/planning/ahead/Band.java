package org.lowfirst.planning.ahead;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.planning.words.Phrases;

/**
 * A whole number that is not known: half of the time it is from {@code low50} to {@code high50}, nine times in ten from
 * {@code low90} to {@code high90}, both ends included.
 */
public record Band(int low90, int low50, int middle, int high50, int high90) {

    /** The band of equally likely values, in any order; the array is left as it is. */
    public static Band ofEqual(int[] values) {
        int[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Band(at(sorted, 0.05), at(sorted, 0.25), at(sorted, 0.5), at(sorted, 0.75), at(sorted, 0.95));
    }

    /** The value that this share of all values does not exceed; {@code sorted} ascending. */
    static int at(int[] sorted, double share) {
        return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
    }

    /** For example "9 (likely 7 to 11, hardly outside 5 to 14)", in English. */
    public String inWords() {
        return inWords(Locale.ENGLISH);
    }

    public String inWords(Locale language) {
        return low90 == high90
                ? Integer.toString(middle)
                : Phrases.in(language)
                        .text(
                                "band",
                                Map.of(
                                        "middle", Integer.toString(middle),
                                        "low50", Integer.toString(low50),
                                        "high50", Integer.toString(high50),
                                        "low90", Integer.toString(low90),
                                        "high90", Integer.toString(high90)));
    }
}
