package org.lowfirst.gas.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the text format described at the top of {@code oxygen.helmholtz.txt}. */
final class SubstanceReader {

    private static final Pattern STATEMENT = Pattern.compile("([a-zA-Z0-9-]+)\\s*=\\s*(\\S.*?)\\s*");
    private static final Pattern HEADING = Pattern.compile("\\[([a-z-]+)] digits (\\d{1,2})\\s*");

    private final String file;
    private final Map<String, SubstanceFile.Statement> statements = new LinkedHashMap<>();
    private final Map<String, SubstanceTable> tables = new LinkedHashMap<>();
    private @Nullable SubstanceTable open;

    private SubstanceReader(String file) {
        this.file = file;
    }

    static SubstanceFile read(URL resource) {
        SubstanceReader reader = new SubstanceReader(resource.getPath());
        try (InputStream bytes = resource.openStream();
                BufferedReader lines = new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
            int number = 0;
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                number++;
                reader.accept(new SourceLine(reader.file, number, text));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return new SubstanceFile(reader.file, reader.statements, reader.tables);
    }

    private void accept(SourceLine line) {
        String text = line.text();
        if (text.isBlank() || text.startsWith("#")) {
            open = null;
            return;
        }
        if (open != null) {
            open.add(line);
            return;
        }
        Matcher heading = HEADING.matcher(text);
        if (heading.matches()) {
            String name = heading.group(1);
            open = new SubstanceTable(line, name, Integer.parseInt(heading.group(2)));
            if (tables.put(name, open) != null) {
                throw line.malformed("The table " + name + " appears twice.", 1);
            }
            return;
        }
        Matcher statement = STATEMENT.matcher(text);
        if (!statement.matches()) {
            throw line.malformed("Neither a comment, nor 'key = value', nor '[section] digits N'.", 1);
        }
        if (statements.put(statement.group(1), new SubstanceFile.Statement(line, statement.group(2))) != null) {
            throw line.malformed("The key " + statement.group(1) + " appears twice.", 1);
        }
    }
}
