package org.lowfirst.station;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What happened. Each fact becomes one entry of the journal; the set is closed and its names are for ever.
 *
 * <p>Facts carry what was typed and read, never what was computed from it.
 */
public sealed interface Fact
        permits Fact.BenchOpened,
                Fact.SettingsChanged,
                Fact.SupplyConnected,
                Fact.SupplyAmended,
                Fact.SupplyRemoved,
                Fact.BottleRegistered,
                Fact.BottleAmended,
                Fact.BottleRetired,
                Fact.ReadingTaken,
                Fact.WarmBottleRead,
                Fact.FillStarted,
                Fact.StageRecorded,
                Fact.FillFinished,
                Fact.FillAbandoned,
                Fact.FillRecorded,
                Fact.TwoOpenedTogether,
                Fact.GaugeDescribed,
                Fact.GaugeRetired,
                Fact.WarmStopAllowed,
                Fact.WarmStopForbidden,
                Fact.EntryCorrected,
                AreaFact {

    record BenchOpened(Settings settings) implements Fact {}

    /** All settings as they are from now on. */
    record SettingsChanged(Settings settings) implements Fact {}

    record SupplyConnected(SupplyId supply, SupplyDetails details, Reading reading) implements Fact {}

    /** All details as they should have been read from the supply. */
    record SupplyAmended(SupplyId supply, SupplyDetails details) implements Fact {}

    /**
     * A supply left the bank.
     *
     * @param residual its gauge when it left, when read
     */
    record SupplyRemoved(SupplyId supply, @Nullable Reading residual, String reason) implements Fact {}

    /** @param reading its gauge when registered, when read */
    record BottleRegistered(
            BottleId bottle,
            BottleDetails details,
            @Nullable Reading reading) implements Fact {}

    /** All details as they are from now on. */
    record BottleAmended(BottleId bottle, BottleDetails details) implements Fact {}

    record BottleRetired(BottleId bottle, String reason) implements Fact {}

    record ReadingTaken(CylinderId cylinder, Reading reading) implements Fact {}

    /**
     * A bottle was read shut while its gas was still warm, and somebody measured how warm or worked it out.
     *
     * @param gas temperature of the gas; that of the reading is the one of the surroundings
     */
    record WarmBottleRead(BottleId bottle, Reading reading, StatedTemperature gas) implements Fact {}

    /**
     * @param target settled gauge reading wanted
     * @param before bottle gauge before the first stage
     */
    record FillStarted(FillId fill, BottleId bottle, StatedPressure target, Reading before) implements Fact {}

    /** One stage ended; the gas has moved whatever becomes of the fill. */
    record StageRecorded(FillId fill, Stage stage) implements Fact {}

    /** @param after bottle gauge when its valve was shut */
    record FillFinished(FillId fill, Reading after) implements Fact {}

    /** The fill was broken off; the stages recorded so far stand. */
    record FillAbandoned(FillId fill, String reason) implements Fact {}

    /**
     * A whole fill, entered afterwards in one go.
     *
     * @param target settled gauge reading wanted, when somebody said one
     * @param stages what happened, in order; empty when only the two bottle readings are known
     */
    record FillRecorded(
            FillId fill,
            BottleId bottle,
            @Nullable StatedPressure target,
            Reading before,
            Reading after,
            List<Stage> stages)
            implements Fact {

        public FillRecorded {
            stages = List.copyOf(stages);
        }
    }

    /**
     * Two supplies were open together, so gas went from the fuller to the emptier.
     *
     * @param firstAfter gauge of the first afterwards, when read
     * @param secondAfter gauge of the second afterwards, when read
     */
    record TwoOpenedTogether(
            SupplyId first,
            SupplyId second,
            @Nullable Reading firstAfter,
            @Nullable Reading secondAfter) implements Fact {}

    /** A gauge as it is from now on; the name says which. */
    record GaugeDescribed(GaugeDetails gauge) implements Fact {}

    record GaugeRetired(String gauge, String reason) implements Fact {}

    /** The responsible person lets warm fills stop above the marked pressure, following a published rule or table. */
    record WarmStopAllowed(WarmStop permission) implements Fact {}

    record WarmStopForbidden(String responsible) implements Fact {}

    /**
     * An earlier entry is reversed, or replaced by what really happened.
     *
     * @param corrected sequence number of the entry that no longer counts
     * @param replacement what counts in its place, of the same kind; null when nothing of the sort happened
     */
    record EntryCorrected(
            long corrected, String reason, @Nullable Fact replacement) implements Fact {}
}
