package org.lowfirst.planning.contents;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/** One of the resource files of this package: every key is asked for once, none is left over. */
final class SettingsFile {

    private final String name;
    private final Properties values = new Properties();
    private final Set<String> asked = new TreeSet<>();

    SettingsFile(String name) {
        this.name = name;
        URL file = Objects.requireNonNull(SettingsFile.class.getResource(name), name + " is not in the jar");
        try (Reader text = new InputStreamReader(file.openStream(), StandardCharsets.UTF_8)) {
            values.load(text);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    String text(String key) {
        asked.add(key);
        String value = values.getProperty(key);
        if (value == null) {
            throw new IllegalArgumentException("The key \"" + key + "\" must be in " + name + ".");
        }
        return value;
    }

    double number(String key) {
        return Double.parseDouble(text(key));
    }

    /** A number that must be above 0. */
    double positive(String key) {
        double value = number(key);
        if (!(value > 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    "The value of " + key + " (" + value + ") in " + name + " must be finite and above 0.");
        }
        return value;
    }

    /** Ends the reading; a key nobody asked for is a spelling mistake. */
    void end() {
        Set<String> unknown = new TreeSet<>(values.stringPropertyNames());
        unknown.removeAll(asked);
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("The keys " + unknown + " in " + name + " must be known ones.");
        }
    }
}
