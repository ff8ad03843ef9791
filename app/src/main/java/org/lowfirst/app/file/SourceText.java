package org.lowfirst.app.file;

import java.util.List;

/**
 * A text with the name people know it by.
 *
 * @param name how problems name it, usually the file as it was typed
 * @param text its content
 */
public record SourceText(String name, String text) {

    /** The lines without their ends; an empty text has one empty line. */
    public List<String> lines() {
        return List.of(text.split("\r\n|\r|\n", -1));
    }

    /** The line with this number, from 1; empty beyond the end. */
    public String line(int number) {
        List<String> lines = lines();
        return number <= lines.size() ? lines.get(number - 1) : "";
    }
}
