package org.lowfirst.app.table;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Quantities;

/** Recognises the heading of a column in the spellings of the file headings.properties, with a unit in it or without. */
final class KnownHeadings {

    private static final Pattern IN_BRACKETS = Pattern.compile("[\\[(]([^])]*)[])]");

    private static final Map<String, BottleColumn> SPELLINGS = spellings();

    private KnownHeadings() {}

    /**
     * @param unit as written in the heading; empty when there is none
     */
    record Heading(BottleColumn column, String unit) {}

    static Optional<Heading> find(String heading) {
        Matcher brackets = IN_BRACKETS.matcher(heading);
        if (brackets.find()) {
            String unit = brackets.group(1).strip();
            return column(brackets.replaceAll(" ")).map(column -> new Heading(column, isUnit(unit) ? unit : ""));
        }
        String text = heading.strip();
        int last = Math.max(text.lastIndexOf(' '), text.lastIndexOf(','));
        if (last > 0 && isUnit(text.substring(last + 1).strip())) {
            Optional<BottleColumn> column = column(text.substring(0, last).replaceAll("\\s+in$", ""));
            return column.map(
                    found -> new Heading(found, text.substring(last + 1).strip()));
        }
        return column(text).map(column -> new Heading(column, ""));
    }

    private static Optional<BottleColumn> column(String heading) {
        return Optional.ofNullable(SPELLINGS.get(plain(heading)));
    }

    private static boolean isUnit(String text) {
        return Quantities.pressure("1 " + text) instanceof Parsed.Read
                || Quantities.volume("1 " + text) instanceof Parsed.Read;
    }

    /** Small letters without marks, words set apart by one space. */
    static String plain(String text) {
        return Normalizer.normalize(text.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", " ")
                .strip();
    }

    private static Map<String, BottleColumn> spellings() {
        Properties file = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(KnownHeadings.class.getResourceAsStream("headings.properties")),
                StandardCharsets.UTF_8)) {
            file.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, BottleColumn> spellings = new HashMap<>();
        for (BottleColumn column : BottleColumn.values()) {
            Arrays.stream(file.getProperty(column.key()).split(","))
                    .forEach(spelling -> spellings.put(plain(spelling), column));
        }
        return Map.copyOf(spellings);
    }
}
