package org.lowfirst.transfer.warm;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Figures read from a resource file, each with unit, range, status and source. Immutable.
 *
 * <p>One figure a line, fields separated by {@code |}: name, value, unit, range, status, source; {@code #} starts a comment
 * line.
 */
public final class Datasheet {

    private static final int FIELDS = 6;

    private final String file;
    private final Map<String, Figure> figures;

    private Datasheet(String file, Map<String, Figure> figures) {
        this.file = file;
        this.figures = figures;
    }

    /**
     * Reads a datasheet that lies beside a class.
     *
     * @throws IllegalArgumentException when it is missing or a line does not say what it must; file, line and a caret are named
     */
    public static Datasheet beside(Class<?> owner, String file) {
        try (InputStream stream = owner.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalArgumentException("The datasheet " + file + " is not in the jar.");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return parse(file, reader.lines().toList());
        } catch (IOException broken) {
            throw new UncheckedIOException("The datasheet " + file + " cannot be read.", broken);
        }
    }

    /** Reads a datasheet from its lines; for errors see {@link #beside}. */
    public static Datasheet parse(String file, List<String> lines) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            Figure figure = figure(file, i + 1, line);
            if (figures.put(figure.name(), figure) != null) {
                throw malformed(file, i + 1, line, 0, "The figure " + figure.name() + " appears twice.");
            }
        }
        return new Datasheet(file, Map.copyOf(figures));
    }

    private static Figure figure(String file, int number, String line) {
        String[] parts = line.split("\\|", -1);
        if (parts.length != FIELDS) {
            throw malformed(file, number, line, 0, "A figure has " + FIELDS + " fields, not " + parts.length + ".");
        }
        int at = parts[0].length() + 1;
        double value;
        try {
            value = Double.parseDouble(parts[1].strip());
        } catch (NumberFormatException unreadable) {
            throw malformed(file, number, line, at, "'" + parts[1].strip() + "' is not a number.");
        }
        at += parts[1].length() + parts[2].length() + parts[3].length() + 3;
        Status status;
        try {
            status = Status.valueOf(parts[4].strip().toUpperCase(Locale.ROOT).replace('-', '_'));
        } catch (IllegalArgumentException unknown) {
            throw malformed(file, number, line, at, "'" + parts[4].strip() + "' is not a status.");
        }
        return new Figure(parts[0].strip(), value, parts[2].strip(), parts[3].strip(), status, parts[5].strip());
    }

    private static IllegalArgumentException malformed(String file, int number, String line, int at, String problem) {
        return new IllegalArgumentException(
                problem + "\n" + file + ":" + number + ":" + (at + 1) + "\n" + line + "\n" + " ".repeat(at) + "^");
    }

    /** A figure by name, whatever its unit. */
    public Figure figure(String name) {
        Figure figure = figures.get(name);
        if (figure == null) {
            throw new IllegalArgumentException("The datasheet " + file + " has no figure '" + name + "'.");
        }
        return figure;
    }

    /** The number of a figure whose unit must be this one. */
    public double value(String name, String unit) {
        Figure figure = figure(name);
        if (!figure.unit().equals(unit)) {
            throw new IllegalArgumentException(
                    "The figure " + name + " of " + file + " is in " + figure.unit() + ", not in " + unit + ".");
        }
        return figure.value();
    }

    /** This datasheet with one figure times a factor, marked as assumed: to see how much a result depends on it. */
    Datasheet times(String name, double factor) {
        Figure old = figure(name);
        Map<String, Figure> changed = new LinkedHashMap<>(figures);
        changed.put(
                name, new Figure(name, factor * old.value(), old.unit(), old.range(), Status.ASSUMED, old.source()));
        return new Datasheet(file, Map.copyOf(changed));
    }

    /** Every figure. */
    public List<Figure> all() {
        return List.copyOf(figures.values());
    }
}
