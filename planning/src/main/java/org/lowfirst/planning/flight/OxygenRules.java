package org.lowfirst.planning.flight;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/** The rule texts known to Lowfirst, from oxygen-rules.csv. */
public final class OxygenRules {

    private static final String FILE = "oxygen-rules.csv";
    private static final int COLUMNS = 9;

    private OxygenRules() {}

    /** All rules, in the order of the file. */
    public static List<OxygenRule> all() {
        try (InputStream in = Objects.requireNonNull(OxygenRules.class.getResourceAsStream(FILE), FILE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("set,"))
                    .map(OxygenRules::rule)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(FILE, unreadable);
        }
    }

    /** The rules of one set; empty when the set is not known. */
    public static List<OxygenRule> ofSet(String set) {
        return all().stream().filter(rule -> rule.set().equals(set)).toList();
    }

    private static OxygenRule rule(String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != COLUMNS) {
            throw new IllegalArgumentException(FILE + " needs " + COLUMNS + " columns: " + line);
        }
        return new OxygenRule(
                cells[0],
                cells[1],
                Occupant.Role.valueOf(cells[2]),
                Altitude.ofFeet(Double.parseDouble(cells[3])),
                Altitude.ofFeet(Double.parseDouble(cells[4])),
                Duration.ofMinutes(Long.parseLong(cells[5])),
                OxygenRule.Duty.valueOf(cells[6]),
                Integer.parseInt(cells[7]),
                cells[8]);
    }
}
