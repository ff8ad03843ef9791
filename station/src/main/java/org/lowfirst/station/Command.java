package org.lowfirst.station;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What somebody asks of a bench. A command is decided into facts or a refusal, see {@link Deciding}. */
public sealed interface Command {

    record OpenBench(Settings settings) implements Command {}

    record ChangeSettings(Settings settings) implements Command {}

    record ConnectSupply(SupplyId supply, SupplyDetails details, Reading reading) implements Command {}

    record AmendSupply(SupplyId supply, SupplyDetails details) implements Command {}

    record RemoveSupply(SupplyId supply, @Nullable Reading residual, String reason) implements Command {}

    record RegisterBottle(
            BottleId bottle,
            BottleDetails details,
            @Nullable Reading reading) implements Command {}

    record AmendBottle(BottleId bottle, BottleDetails details) implements Command {}

    record RetireBottle(BottleId bottle, String reason) implements Command {}

    record TakeReading(CylinderId cylinder, Reading reading) implements Command {}

    record StartFill(FillId fill, BottleId bottle, StatedPressure target, Reading before) implements Command {}

    record RecordStage(FillId fill, Stage stage) implements Command {}

    record FinishFill(FillId fill, Reading after) implements Command {}

    record AbandonFill(FillId fill, String reason) implements Command {}

    /** See {@link Fact.FillRecorded}. */
    record RecordFill(
            FillId fill,
            BottleId bottle,
            @Nullable StatedPressure target,
            Reading before,
            Reading after,
            List<Stage> stages)
            implements Command {

        public RecordFill {
            stages = List.copyOf(stages);
        }
    }

    record RecordTwoOpenTogether(
            SupplyId first,
            SupplyId second,
            @Nullable Reading firstAfter,
            @Nullable Reading secondAfter) implements Command {}

    /**
     * @param entry the entry to correct, as it stands in the journal
     * @param replacement what really happened, of the same kind; null to reverse only
     */
    record CorrectEntry(
            Entry entry, String reason, @Nullable Fact replacement) implements Command {}
}
