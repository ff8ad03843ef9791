package org.lowfirst.app.gas;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lowfirst.app.file.CsvCell;
import org.lowfirst.app.file.CsvColumns;
import org.lowfirst.app.file.CsvRows;
import org.lowfirst.app.file.FileText;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GasState;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Transport;

/** Works out the properties of a gas for each row of a CSV file with the columns T_K and p_Pa (absolute). */
public final class TabulatingStates {

    /** Some 300,000 rows. */
    public static final int MOST_BYTES = 8_388_608;

    private static final List<String> COLUMNS = List.of("T_K", "p_Pa");

    private final CaloricEquation gas;
    private final Transport transport;

    public TabulatingStates(CaloricEquation gas, Transport transport) {
        this.gas = gas;
        this.transport = transport;
    }

    /**
     * Tabulates one file, or none of it.
     *
     * @param name how problems name the file
     * @param bytes its content, at most {@link #MOST_BYTES}
     */
    public StateTable tabulate(String name, byte[] bytes) {
        Problems problems = new Problems();
        Optional<String> text =
                FileText.decode(bytes, MOST_BYTES, "split it and keep the header in each part", problems);
        SourceText source = new SourceText(name, text.orElseGet(() -> new String(bytes, StandardCharsets.UTF_8)));
        if (text.isPresent()) {
            Rows rows = new Rows(problems);
            CsvRows.read(source, rows, problems);
            if (!problems.haveErrors()) {
                return new StateTable.Tabulated(rows.out.toString());
            }
        }
        return new StateTable.Refused(source, problems.inOrder());
    }

    /** Adds a line of properties for each row. */
    private final class Rows implements CsvRows.Reader {

        private final Problems problems;
        private final StringBuilder out = new StringBuilder();
        private CsvColumns columns;

        Rows(Problems problems) {
            this.problems = problems;
            this.columns = new CsvColumns(List.of(), List.of(), problems);
            out.append(StateLine.HEADER).append('\n');
        }

        @Override
        public boolean header(List<CsvCell> names) {
            columns = new CsvColumns(names, COLUMNS, problems);
            return columns.require(COLUMNS);
        }

        @Override
        public void row(List<CsvCell> cells) {
            if (!columns.fits(cells)) {
                return;
            }
            OptionalDouble T_K = columns.number(cells, "T_K");
            OptionalDouble p_Pa = columns.number(cells, "p_Pa");
            if (T_K.isEmpty() || p_Pa.isEmpty()) {
                return;
            }
            StateFault.first(T_K.getAsDouble(), p_Pa.getAsDouble(), gas.range())
                    .ifPresentOrElse(fault -> fault.report(columns, cells, problems), () -> {
                        Evaluated<GasState> state =
                                gas.state(new AbsolutePressure(p_Pa.getAsDouble()), new Temperature(T_K.getAsDouble()));
                        add(state, T_K.getAsDouble(), p_Pa.getAsDouble(), cells);
                    });
        }

        private void add(Evaluated<GasState> state, double T_K, double p_Pa, List<CsvCell> cells) {
            Evaluated<String> line = state.then(found -> transport
                    .values(new AbsolutePressure(p_Pa), new Temperature(T_K))
                    .map(values -> StateLine.of(T_K, p_Pa, found, gas.molarMass_kgPerMol(), values)));
            if (line instanceof Evaluated.Value<String> value) {
                out.append(value.value()).append('\n');
            } else {
                StateFault.of(line).report(columns, cells, problems);
            }
        }
    }
}
