package org.lowfirst.app.fitness;

import java.util.List;

/**
 * A line typed from a stamp, part by part in words.
 *
 * @param parts in the order of the line
 */
public record StampInWords(List<Part> parts) {

    public StampInWords {
        parts = List.copyOf(parts);
    }

    /**
     * @param index its place among the parts, from 0
     * @param text as typed
     * @param meaning what it means
     * @param unknown whether nobody understood it
     * @param notes what about it is uncertain
     * @param others other meanings it can have, to be chosen from
     */
    public record Part(
            int index, String text, String meaning, boolean unknown, List<String> notes, List<String> others) {

        public Part {
            notes = List.copyOf(notes);
            others = List.copyOf(others);
        }
    }
}
