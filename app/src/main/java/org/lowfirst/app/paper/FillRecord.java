package org.lowfirst.app.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;

/**
 * One fill as the journal tells it.
 *
 * @param bottle as it is now
 * @param target settled gauge reading wanted, when somebody said one
 * @param before gauge before the first stage
 * @param after gauge when the bottle's valve was shut; null while the fill is open or when it was broken off
 * @param ending how it ended
 * @param stages in order
 * @param entries the entries it was taken from, in order
 */
public record FillRecord(
        Heading heading,
        BottleDetails bottle,
        @Nullable StatedPressure target,
        Reading before,
        @Nullable Reading after,
        Ending ending,
        List<StageRow> stages,
        List<EntryRow> entries)
        implements Paper {

    public FillRecord {
        stages = List.copyOf(stages);
        entries = List.copyOf(entries);
    }

    /** How a fill ended. */
    public enum Ending {
        FINISHED,
        ABANDONED,
        OPEN
    }

    /**
     * @param supply name of the supply
     * @param supplyBefore its gauge before opening, when read
     * @param supplyAfter its gauge after shutting, when read
     */
    public record StageRow(
            String supply,
            Reading bottleAfter,
            @Nullable Reading supplyBefore,
            @Nullable Reading supplyAfter) {}

    /**
     * @param seq its number in the journal
     * @param author who entered it
     * @param said what it says, in a sentence
     * @param hash its hash
     */
    public record EntryRow(long seq, String author, String said, String hash) {}
}
