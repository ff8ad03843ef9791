package org.lowfirst.app.honest;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SupplyId;

/** One thing the journal says of a cylinder's contents. */
sealed interface Happening {

    Instant at();

    /** What can have become of a cylinder since it was last read, stages apart. */
    enum Since {
        /** It came, or somebody had it. */
        ANEW,
        /** It stood shut at the bench. */
        AT_BENCH,
        /** A bottle was looked at: it stood shut if that was soon after its fill. */
        LOOKED_AT
    }

    /** A reading and the key of the gauge it was taken from. */
    record Shown(Reading reading, String gauge) {}

    /**
     * @param at when, not before what happened earlier in the same fill
     * @param gas temperature of its gas where somebody said how warm it still was; null otherwise
     */
    record Read(
            Instant at,
            CylinderId cylinder,
            Shown shown,
            Since since,
            @Nullable FillId fill,
            @Nullable Temperature gas) implements Happening {

        Read(Instant at, CylinderId cylinder, Shown shown, Since since, @Nullable FillId fill) {
            this(at, cylinder, shown, since, fill, null);
        }
    }

    /**
     * A stage.
     *
     * @param target what the fill was to come to; null when nobody said
     */
    record Moved(
            Instant at,
            FillId fill,
            SupplyId supply,
            BottleId bottle,
            Shown bottleAfter,
            @Nullable Shown supplyAfter,
            @Nullable GaugePressure target)
            implements Happening {}

    /** A bottle got gas and nobody said from which of these supplies. */
    record Unsaid(Instant at, FillId fill, BottleId bottle, Shown before, Shown after, List<SupplyId> bank)
            implements Happening {

        public Unsaid {
            bank = List.copyOf(bank);
        }
    }

    /** Nobody knows what became of a cylinder: its contents are what it reads next. */
    record Loosened(Instant at, CylinderId cylinder) implements Happening {}
}
