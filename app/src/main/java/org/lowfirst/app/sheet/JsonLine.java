package org.lowfirst.app.sheet;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One JSON text (RFC 8259) on one line, written member by member, in the order it is told, so that the same plan gives the same bytes.
 * Numbers have the fewest digits that read back as the same double. Not thread-safe.
 */
public final class JsonLine {

    private final StringBuilder text = new StringBuilder(1024);
    private boolean first = true;

    public JsonLine openObject() {
        return open('{');
    }

    public JsonLine closeObject() {
        return close('}');
    }

    public JsonLine openList() {
        return open('[');
    }

    public JsonLine closeList() {
        return close(']');
    }

    /** The key of what is written next. */
    public JsonLine key(String key) {
        separate();
        quote(key);
        text.append(':');
        first = true;
        return this;
    }

    public JsonLine value(String value) {
        separate();
        quote(value);
        return this;
    }

    public JsonLine value(boolean value) {
        return raw(Boolean.toString(value));
    }

    public JsonLine value(int value) {
        return raw(Integer.toString(value));
    }

    /** @param value a finite number, or null */
    public JsonLine value(@Nullable Double value) {
        if (value != null && !Double.isFinite(value)) {
            throw new IllegalArgumentException("The number (" + value + ") must be finite to be written as JSON.");
        }
        return raw(value == null ? "null" : shortest(value));
    }

    public JsonLine nothing() {
        return raw("null");
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private static String shortest(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return Double.toString(value);
    }

    private JsonLine open(char bracket) {
        separate();
        text.append(bracket);
        first = true;
        return this;
    }

    private JsonLine close(char bracket) {
        text.append(bracket);
        first = false;
        return this;
    }

    private JsonLine raw(String word) {
        separate();
        text.append(word);
        return this;
    }

    private void separate() {
        if (!first) {
            text.append(',');
        }
        first = false;
    }

    private void quote(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (c < 0x20 || c == 0x7F || (Character.isSurrogate(c) && !paired(value, i))) {
                text.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                text.append(c);
            }
        }
        text.append('"');
    }

    private static boolean paired(String value, int i) {
        return Character.isHighSurrogate(value.charAt(i))
                ? i + 1 < value.length() && Character.isLowSurrogate(value.charAt(i + 1))
                : i > 0 && Character.isHighSurrogate(value.charAt(i - 1));
    }
}
