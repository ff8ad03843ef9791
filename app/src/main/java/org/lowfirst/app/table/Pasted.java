package org.lowfirst.app.table;

import java.util.List;
import java.util.Map;

/** What came of reading a pasted or sent table of bottles. */
public sealed interface Pasted {

    /**
     * The columns were recognised.
     *
     * @param columns those that are there, in order
     * @param rows the rows below the headings
     * @param leftOut headings that were not recognised; their cells are not used
     */
    record Table(List<BottleColumn> columns, List<Row> rows, List<String> leftOut) implements Pasted {

        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * Nothing can be made of it.
     *
     * @param why what is wrong and what to do, in a sentence
     */
    record Unreadable(String why) implements Pasted {}

    /**
     * @param cells what stands under each column, with the unit of its heading behind it when it has none
     */
    record Row(Map<BottleColumn, String> cells) {

        public Row {
            cells = Map.copyOf(cells);
        }

        /** What stands under a column, without spaces at its ends; empty when nothing does. */
        public String cell(BottleColumn column) {
            return cells.getOrDefault(column, "").strip();
        }
    }
}
