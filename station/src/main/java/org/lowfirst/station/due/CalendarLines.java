package org.lowfirst.station.due;

/** Content lines of RFC 5545 (3.1): ended by CR LF, folded so that none is over 75 octets, never inside a character. */
final class CalendarLines {

    private static final int OCTETS = 75;

    private final StringBuilder text = new StringBuilder();

    /** A line whose value is written as it is. */
    CalendarLines line(String name, String value) {
        return folded(name + ":" + value);
    }

    /** A line whose value is text, escaped by RFC 5545 (3.3.11). */
    CalendarLines text(String name, String value) {
        return folded(name + ":" + escaped(value));
    }

    private CalendarLines folded(String line) {
        int room = OCTETS;
        for (int i = 0; i < line.length(); ) {
            int character = line.codePointAt(i);
            int octets = octets(character);
            if (octets > room) {
                text.append("\r\n ");
                room = OCTETS - 1;
            }
            text.appendCodePoint(character);
            room -= octets;
            i += Character.charCount(character);
        }
        text.append("\r\n");
        return this;
    }

    /** Length in UTF-8. */
    private static int octets(int character) {
        if (character < 0x80) {
            return 1;
        }
        if (character < 0x800) {
            return 2;
        }
        return character < 0x10000 ? 3 : 4;
    }

    /** Backslash, semicolon, comma and line ends escaped; other control characters, which RFC 5545 does not let in, become spaces. */
    static String escaped(String value) {
        StringBuilder escaped = new StringBuilder();
        value.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(character -> {
            if (character == '\n') {
                escaped.append("\\n");
            } else if (character == '\\' || character == ';' || character == ',') {
                escaped.append('\\').appendCodePoint(character);
            } else if (Character.isISOControl(character) && character != '\t') {
                escaped.append(' ');
            } else if (character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE) {
                escaped.append('\uFFFD');
            } else {
                escaped.appendCodePoint(character);
            }
        });
        return escaped.toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
