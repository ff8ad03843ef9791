package org.lowfirst.app.table;

/**
 * Keeps a spreadsheet from taking a text for a formula: a text that begins with one of {@code = + - @}, a tab or a return gets
 * an apostrophe in front, and so does one that begins with an apostrophe, so that every text comes back as it was. Numbers are
 * left alone. The characters are those of the OWASP page on CSV injection (from memory).
 */
final class CellText {

    private static final String BEGINNINGS = "=+-@\t\r'";

    private CellText() {}

    static String guarded(String text) {
        return begins(text, 0) ? "'" + text : text;
    }

    /** The text that was guarded; a text that never was stays as it is. */
    static String unguarded(String cell) {
        return cell.startsWith("'") && begins(cell, 1) ? cell.substring(1) : cell;
    }

    private static boolean begins(String text, int at) {
        return text.length() > at && BEGINNINGS.indexOf(text.charAt(at)) >= 0;
    }
}
