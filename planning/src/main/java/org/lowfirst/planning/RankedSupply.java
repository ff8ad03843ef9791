package org.lowfirst.planning;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A supply in its place in the bank.
 *
 * @param rank 1 = lowest pressure upwards; equal pressures keep the order in which they were given
 * @param name what the bench calls it
 * @param waterVolume internal volume
 * @param reading settled gauge reading
 * @param contents gas inside
 * @param turn when it is opened
 */
public record RankedSupply(
        int rank, String name, Volume waterVolume, GaugePressure reading, Amount contents, Turn turn) {

    /** Whether it must not be opened. */
    public boolean heldBack() {
        return turn == Turn.HELD_BACK;
    }

    public SupplyState toState() {
        return new SupplyState(name, waterVolume, reading, turn);
    }

    /** The same supply with other contents, its rank kept until the bank is ranked again. */
    RankedSupply holding(GaugePressure newReading, Amount newContents) {
        return new RankedSupply(rank, name, waterVolume, newReading, newContents, turn);
    }

    RankedSupply inRank(int newRank) {
        return rank == newRank ? this : new RankedSupply(newRank, name, waterVolume, reading, contents, turn);
    }
}
