package org.lowfirst.station.stamp;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.stream.Collectors;

/** Signs of countries, from country-signs.txt. */
final class CountrySigns {

    private static final String FILE = "country-signs.txt";
    private static final Set<String> SIGNS = read();

    private CountrySigns() {}

    static boolean isOne(String capitals) {
        return SIGNS.contains(capitals);
    }

    private static Set<String> read() {
        InputStream stream = CountrySigns.class.getResourceAsStream(FILE);
        if (stream == null) {
            throw new IllegalStateException("The list " + FILE + " is missing from the program.");
        }
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The list " + FILE + " cannot be read.", unreadable);
        }
    }
}
