package org.lowfirst.app.paper;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Standing;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Units;

/**
 * The bank and the bottles on paper, with what the next fill of each bottle would be. Good until gas is drawn.
 *
 * @param supplies bank by bank, rank 1 of each first
 * @param from name of the bank that the next fills are planned from; empty for the one without a name
 * @param bottles those in use
 */
public record BenchSheet(Heading heading, Units units, List<SupplyRow> supplies, String from, List<BottleRow> bottles)
        implements Paper {

    public BenchSheet {
        supplies = List.copyOf(supplies);
        bottles = List.copyOf(bottles);
    }

    /**
     * @param bank name of its bank; empty for the one without a name
     * @param rank place in its bank, 1 = lowest pressure
     * @param standing when it is opened
     * @param expected what its gauge should show at the bench's usual temperature
     * @param reading the latest reading
     */
    public record SupplyRow(
            String bank,
            int rank,
            Standing standing,
            String name,
            StatedVolume waterVolume,
            GaugePressure expected,
            Reading reading) {}

    /**
     * @param reading the latest reading; null before the first
     * @param next what its next fill would be; null when nobody can say without a reading
     */
    public record BottleRow(
            String name,
            String owner,
            StatedVolume waterVolume,
            StatedPressure servicePressure,
            @Nullable Reading reading,
            @Nullable NextFill next) {}

    /**
     * @param target settled gauge reading wanted
     * @param reached settled gauge reading the bank brings it to
     * @param reaches whether that is where it is to stop
     * @param steps in order; empty when it holds enough already or no supply can give it anything
     * @param refused why nothing is planned, in a sentence; empty when something is
     */
    public record NextFill(
            StatedPressure target, GaugePressure reached, boolean reaches, List<PlannedStep> steps, String refused) {

        public NextFill {
            steps = List.copyOf(steps);
        }
    }

    /**
     * @param supply name of the supply to open
     * @param bottleAfter what the bottle's gauge shows when it is to be shut
     */
    public record PlannedStep(String supply, GaugePressure bottleAfter) {}

    /** Whether supplies stand in banks with names, so that these must be told apart. */
    public boolean severalBanks() {
        return supplies.stream().map(SupplyRow::bank).anyMatch(bank -> !bank.isEmpty());
    }

    /** When the oldest of the bank's readings was taken; null without supplies. */
    public @Nullable Instant oldestReading() {
        return supplies.stream()
                .map(row -> row.reading().at())
                .min(Instant::compareTo)
                .orElse(null);
    }
}
