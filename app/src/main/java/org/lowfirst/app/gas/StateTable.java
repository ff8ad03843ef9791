package org.lowfirst.app.gas;

import java.util.List;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.SourceText;

/** What came of a file of temperatures and pressures. */
public sealed interface StateTable {

    /** @param csv one row of properties for each row of the file, after a header */
    record Tabulated(String csv) implements StateTable {}

    /** Something is wrong with the file; nothing was tabulated. */
    record Refused(SourceText source, List<Problem> problems) implements StateTable {

        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
