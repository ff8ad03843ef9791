package org.lowfirst.gas.internal;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What a substance file states: texts, quantities with their unit, tables. Asking for something checks it. */
final class SubstanceFile {

    record Statement(SourceLine line, String text) {}

    private final String name;
    private final Map<String, Statement> statements;
    private final Map<String, SubstanceTable> tables;
    private final Set<String> unread;

    SubstanceFile(String name, Map<String, Statement> statements, Map<String, SubstanceTable> tables) {
        this.name = name;
        this.statements = new LinkedHashMap<>(statements);
        this.tables = new LinkedHashMap<>(tables);
        this.unread = new LinkedHashSet<>(statements.keySet());
        unread.addAll(tables.keySet());
    }

    String text(String key) {
        return statement(key).text();
    }

    /** A number that must carry this unit and lie within these limits. */
    double quantity(String key, String unit, double lowest, double highest) {
        Statement statement = statement(key);
        String[] parts = statement.text().split("\\s+", 2);
        SourceLine line = statement.line();
        int column = line.text().indexOf(statement.text(), line.text().indexOf('=')) + 1;
        double value = line.number(parts[0], column);
        if (parts.length < 2 || !parts[1].equals(unit)) {
            throw line.malformed("The unit of " + key + " must be '" + unit + "'.", column + parts[0].length() + 1);
        }
        if (value < lowest || value > highest) {
            throw line.malformed(
                    "The " + key + " (" + parts[0] + " " + unit + ") must be " + lowest + " to " + highest + ".",
                    column);
        }
        return value;
    }

    double number(String key) {
        return quantity(key, "1", -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    SubstanceTable table(String section) {
        SubstanceTable table = tables.get(section);
        if (table == null) {
            throw missing("[" + section + "]");
        }
        unread.remove(section);
        return table;
    }

    boolean states(String key) {
        return statements.containsKey(key);
    }

    /** Call when everything known has been read: what is left over is a slip of the pen. */
    void nothingElse() {
        for (String key : unread) {
            Statement statement = statements.get(key);
            if (statement == null) {
                throw new MalformedSubstanceFile("Unknown table.", name, 0, 1, "[" + key + "]");
            }
            throw statement.line().malformed("Unknown key '" + key + "'.", 1);
        }
    }

    private Statement statement(String key) {
        Statement statement = statements.get(key);
        if (statement == null) {
            throw missing(key);
        }
        unread.remove(key);
        return statement;
    }

    private MalformedSubstanceFile missing(String what) {
        return new MalformedSubstanceFile("The file must state " + what + ".", name, 0, 1, "");
    }
}
