package org.lowfirst.app.sheet;

/** Breaks text into lines of at most 80 columns. */
public final class Paragraph {

    private static final int WIDTH = 80;

    private Paragraph() {}

    /**
     * The words with line breaks, each line ended.
     *
     * @param lead what stands before the first line; the others are indented as deep
     * @param words the text, broken at its spaces
     */
    public static String of(String lead, String words) {
        StringBuilder out = new StringBuilder(lead);
        int column = lead.length();
        boolean lineStart = true;
        for (String word : words.strip().split(" +")) {
            if (!lineStart && column + 1 + word.length() > WIDTH) {
                out.append('\n').append(" ".repeat(lead.length()));
                column = lead.length();
                lineStart = true;
            }
            out.append(lineStart ? "" : " ").append(word);
            column += word.length() + (lineStart ? 0 : 1);
            lineStart = false;
        }
        return out.append('\n').toString();
    }
}
