package org.lowfirst.web.workplace;

import java.util.Map;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.station.EntryKey;

/**
 * Who sends a form, under which key.
 *
 * @param who name of the person; empty when nobody said
 * @param key made with the form, the same on every retry
 * @param confirmed whether the person insists on an unlikely value
 */
public record Sender(String who, String key, boolean confirmed) {

    /** Name of the field. */
    public static final String WHO = "who";

    /** Reads the hidden fields of a form. */
    public static Sender of(Map<String, String> typed) {
        return new Sender(
                typed.getOrDefault(WHO, "").strip(),
                typed.getOrDefault("key", ""),
                "yes".equals(typed.get("confirmed")));
    }

    /** Whether a key came along; without one nothing can be entered. */
    public boolean hasKey() {
        return key.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,59}");
    }

    /** Sends the form's one thing. */
    public Submission submission() {
        return new Submission(new EntryKey(key), who, null, confirmed);
    }

    /** Sends one of several things in a form. */
    public Submission submission(String part) {
        return new Submission(new EntryKey(key + "." + part), who, null, confirmed);
    }
}
