package org.lowfirst.station.stamp;

import java.util.List;

/**
 * One part of the line.
 *
 * @param start index of its first character in the line
 * @param end index after its last
 * @param text the part as typed
 * @param ambiguities other ways to read it, none when it is clear
 */
public record Part(int start, int end, String text, Meaning meaning, List<Ambiguity> ambiguities) {

    public Part {
        ambiguities = List.copyOf(ambiguities);
    }
}
