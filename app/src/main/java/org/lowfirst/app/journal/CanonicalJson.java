package org.lowfirst.app.journal;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Writes JSON in the one form of RFC 8785, so that equal content is equal bytes: members sorted by UTF-16 code units, no
 * white space, shortest escapes. Numbers are whole and exact in a double; decimals are written as strings, digits as typed
 * (RFC 8785 appendix D advises the same).
 */
final class CanonicalJson {

    /** Largest whole number every JSON reader keeps exactly, 2^53 - 1 (RFC 7493 section 2.2). */
    static final long LARGEST = (1L << 53) - 1;

    private static final String HEX = "0123456789abcdef";

    private CanonicalJson() {}

    /** @param value map with string keys, list, string, whole number, boolean, or null */
    static String write(@Nullable Object value) {
        StringBuilder out = new StringBuilder(256);
        write(value, out);
        return out.toString();
    }

    private static void write(@Nullable Object value, StringBuilder out) {
        if (value == null) {
            out.append("null");
        } else if (value instanceof String text) {
            writeString(text, out);
        } else if (value instanceof Boolean truth) {
            out.append(truth.booleanValue());
        } else if (value instanceof Long || value instanceof Integer) {
            writeNumber(((Number) value).longValue(), out);
        } else if (value instanceof Map<?, ?> members) {
            writeObject(members, out);
        } else if (value instanceof List<?> elements) {
            writeArray(elements, out);
        } else {
            throw new IllegalArgumentException(
                    "A " + value.getClass().getSimpleName() + " has no canonical form.\nMaybe write it as a string.");
        }
    }

    private static void writeNumber(long number, StringBuilder out) {
        if (Math.abs(number) > LARGEST) {
            throw new IllegalArgumentException("The number (" + number + ") must be exact in a double.");
        }
        out.append(number);
    }

    private static void writeObject(Map<?, ?> members, StringBuilder out) {
        TreeMap<String, @Nullable Object> sorted = new TreeMap<>();
        members.forEach((name, value) -> sorted.put((String) name, value));
        out.append('{');
        String separator = "";
        for (Map.Entry<String, @Nullable Object> member : sorted.entrySet()) {
            out.append(separator);
            writeString(member.getKey(), out);
            out.append(':');
            write(member.getValue(), out);
            separator = ",";
        }
        out.append('}');
    }

    private static void writeArray(List<?> elements, StringBuilder out) {
        out.append('[');
        String separator = "";
        for (Object element : elements) {
            out.append(separator);
            write(element, out);
            separator = ",";
        }
        out.append(']');
    }

    static void writeString(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                writeControl(c, out);
            } else if (Character.isSurrogate(c)) {
                i = writePair(text, i, out);
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }

    private static int writePair(String text, int at, StringBuilder out) {
        boolean pair = Character.isHighSurrogate(text.charAt(at))
                && at + 1 < text.length()
                && Character.isLowSurrogate(text.charAt(at + 1));
        if (!pair) {
            throw new IllegalArgumentException("The text holds half a character at place " + at + ".");
        }
        out.append(text, at, at + 2);
        return at + 1;
    }

    private static void writeControl(char c, StringBuilder out) {
        switch (c) {
            case '\b' -> out.append("\\b");
            case '\t' -> out.append("\\t");
            case '\n' -> out.append("\\n");
            case '\f' -> out.append("\\f");
            case '\r' -> out.append("\\r");
            default -> out.append("\\u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 0xf));
        }
    }
}
