package org.lowfirst.app.gas;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.CsvCell;
import org.lowfirst.app.file.CsvColumns;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.ValidRange;

/**
 * Why a row has no properties.
 *
 * @param column column the value stands in
 * @param sentence measured value and limit, and what to do
 */
record StateFault(String column, String sentence) {

    private static final String GIVEN_UP =
            "The search for the density at T_K and p_Pa of this row ended without an answer"
                    + " (%d steps). Please report the row.";

    /** What is outside the range of the equation at once. */
    static Optional<StateFault> first(double T_K, double p_Pa, ValidRange range) {
        double lowest_K = range.lowest().kelvin();
        double highest_K = range.highest().kelvin();
        if (!(T_K >= lowest_K && T_K <= highest_K)) {
            return Optional.of(outside("T_K", "temperature", T_K, lowest_K, highest_K, "K"));
        }
        if (!(p_Pa > 0.0)) {
            return Optional.of(new StateFault(
                    "p_Pa",
                    "The absolute pressure (" + number(p_Pa) + " Pa) must be above 0 Pa. "
                            + "A gauge reading counts from the surroundings; add them to it."));
        }
        double highest_Pa = range.highestPressure().pascals();
        return p_Pa > highest_Pa
                ? Optional.of(outside("p_Pa", "absolute pressure", p_Pa, 0.0, highest_Pa, "Pa"))
                : Optional.empty();
    }

    /** What the equation itself refuses. */
    static StateFault of(Evaluated<?> missing) {
        if (missing instanceof Evaluated.OutOfRange<?> out) {
            String column = out.quantity().equals("temperature") ? "T_K" : "p_Pa";
            return outside(column, out.quantity(), out.measured(), out.lowest(), out.highest(), out.unit());
        }
        int steps = missing instanceof Evaluated.NotConverged<?> search ? search.iterations() : 0;
        return new StateFault("p_Pa", GIVEN_UP.formatted(steps));
    }

    void report(CsvColumns columns, List<CsvCell> row, Problems problems) {
        problems.error(columns.cell(row, column).place(), sentence);
    }

    private static StateFault outside(
            String column, String what, double measured, double lowest, double highest, String unit) {
        return new StateFault(
                column,
                "The " + what + " (" + number(measured) + " " + unit + ") must be " + number(lowest) + " to "
                        + number(highest) + " " + unit + ", where the equation holds. Correct it or take the row out.");
    }

    private static String number(double value) {
        double size = Math.abs(value);
        return size != 0.0 && (size < 1e-3 || size >= 1e9) ? Double.toString(value) : Numerals.grouped(value);
    }
}
