package org.lowfirst.station.rules;

import java.io.Serial;

/** A setting that does not say what it must say; caught by the reader, which knows the line. */
final class MalformedSetting extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String key;

    MalformedSetting(String key, String problem) {
        super(problem);
        this.key = key;
    }

    /** The key the problem is with. */
    String key() {
        return key;
    }
}
