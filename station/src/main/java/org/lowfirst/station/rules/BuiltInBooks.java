package org.lowfirst.station.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The books that come with the program, to start from. A bench keeps its own, changed copy in its journal. */
public final class BuiltInBooks {

    private BuiltInBooks() {}

    /** United States: 49 CFR, and good practice where it is silent. */
    public static RuleBook us() {
        return read("us.rules");
    }

    /** Europe: ADR/RID P200, and good practice where it is silent. */
    public static RuleBook eu() {
        return read("eu.rules");
    }

    private static RuleBook read(String file) {
        RuleBookReading reading = RuleBookText.read(file, text(file));
        if (reading instanceof RuleBookReading.Read read) {
            return read.book();
        }
        if (reading instanceof RuleBookReading.Malformed malformed) {
            throw new IllegalStateException(malformed.message());
        }
        throw new AssertionError("unhandled " + reading);
    }

    private static String text(String file) {
        try (InputStream stream = BuiltInBooks.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("The rule file " + file + " is missing from the program.");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The rule file " + file + " cannot be read.", unreadable);
        }
    }
}
