package org.lowfirst.app.table;

import java.util.List;
import java.util.Map;
import org.lowfirst.station.Command;

/**
 * A row of a table of bottles, understood or not.
 *
 * @param typed as it stands
 * @param faults what is wrong, in a sentence, by column; empty when all was understood
 * @param asked what the row asks for; empty when it was not understood, or when the bench has the bottle just so
 */
public record JudgedRow(Pasted.Row typed, Map<BottleColumn, String> faults, List<Command> asked) {

    public JudgedRow {
        faults = Map.copyOf(faults);
        asked = List.copyOf(asked);
    }

    public boolean sound() {
        return faults.isEmpty();
    }
}
