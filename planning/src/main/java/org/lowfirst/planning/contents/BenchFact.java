package org.lowfirst.planning.contents;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What happened at a bench, as far as it bears on contents. */
public sealed interface BenchFact {

    Instant at();

    /**
     * A gauge was read on a cylinder whose valve is shut.
     *
     * @param reading the reading
     * @param since what may have happened to the cylinder since it was last read
     */
    record ReadingTaken(GaugeReading reading, Since since) implements BenchFact {
        @Override
        public Instant at() {
            return reading.at();
        }
    }

    /** What may have happened to a cylinder between two readings, apart from recorded stages. */
    enum Since {
        /** It stayed shut at the bench. */
        KEPT_SHUT,
        /** It was away, or somebody used it: its contents are what it reads now. */
        MAYBE_USED
    }

    /**
     * A supply was opened to a bottle and the stage ended.
     *
     * @param at when it ended
     * @param supply name of the supply
     * @param bottle name of the bottle
     * @param equal whether it ran until both were equal
     * @param moved amount expected to have moved; null to let the readings say
     * @param supplyAfter the supply's gauge at the end; null when not read
     * @param bottleAfter the bottle's gauge at the end; null when not read
     */
    record StageMade(
            Instant at,
            String supply,
            String bottle,
            boolean equal,
            @Nullable ContentsEstimate moved,
            @Nullable GaugeReading supplyAfter,
            @Nullable GaugeReading bottleAfter)
            implements BenchFact {}

    /**
     * A supply left and another took its place. What was known about either name is forgotten.
     *
     * @param leaving name of the supply that left
     * @param arriving reading of the one that came
     */
    record SupplyExchanged(String leaving, GaugeReading arriving) implements BenchFact {
        @Override
        public Instant at() {
            return arriving.at();
        }
    }
}
