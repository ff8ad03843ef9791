package org.lowfirst.gas.internal;

import java.util.ArrayList;
import java.util.List;

/** A table of a substance file, while it is read and afterwards. */
final class SubstanceTable {

    private final SourceLine heading;
    private final String name;
    private final int printedDigits;
    private final List<String> columns = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();

    SubstanceTable(SourceLine heading, String name, int printedDigits) {
        this.heading = heading;
        this.name = name;
        this.printedDigits = printedDigits;
    }

    void add(SourceLine line) {
        String[] tokens = line.text().strip().split("\\s+");
        if (columns.isEmpty()) {
            if (!tokens[0].equals("columns") || tokens.length < 2) {
                throw line.malformed("The table " + name + " must start with its columns.", 1);
            }
            columns.addAll(List.of(tokens).subList(1, tokens.length));
            return;
        }
        if (tokens.length != columns.size()) {
            throw line.malformed(
                    "The table " + name + " has " + columns.size() + " columns, this row has " + tokens.length + ".",
                    1);
        }
        double[] row = new double[tokens.length];
        int from = 0;
        for (int i = 0; i < tokens.length; i++) {
            int at = line.text().indexOf(tokens[i], from);
            from = at + tokens[i].length();
            row[i] = line.number(tokens[i], at + 1);
            if (significantDigits(tokens[i]) > printedDigits) {
                throw line.malformed(
                        "'" + tokens[i] + "' has more than the " + printedDigits + " digits of its section.", at + 1);
            }
        }
        rows.add(row);
    }

    private static int significantDigits(String token) {
        String mantissa = token.split("[eE]")[0].replaceAll("[-+.]", "");
        return mantissa.replaceFirst("^0+", "").length();
    }

    /** The numbers of a column, top to bottom. */
    double[] column(String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw heading.malformed("The table " + name + " needs a column '" + column + "'.", 1);
        }
        double[] numbers = new double[rows.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = rows.get(i)[index];
        }
        return numbers;
    }

    /** The numbers of a column that must be whole and within these limits. */
    int[] wholeColumn(String column, int lowest, int highest) {
        double[] values = column(column);
        int[] whole = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            whole[i] = (int) values[i];
            if (whole[i] != values[i] || whole[i] < lowest || whole[i] > highest) {
                throw heading.malformed(
                        "Column '" + column + "' of " + name + " must hold whole numbers from " + lowest + " to "
                                + highest + ", not " + values[i] + ".",
                        1);
            }
        }
        return whole;
    }
}
