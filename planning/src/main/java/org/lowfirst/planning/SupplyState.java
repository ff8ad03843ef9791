package org.lowfirst.planning;

import java.util.Comparator;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * A supply as it is found.
 *
 * @param name what the bench calls it, one of a kind within the bank
 * @param waterVolume internal volume
 * @param reading settled gauge reading at the bench's temperature
 * @param turn when it is opened; a session of several bottles heeds only whether it must not be
 */
public record SupplyState(String name, Volume waterVolume, GaugePressure reading, Turn turn) {

    public SupplyState(String name, Volume waterVolume, GaugePressure reading) {
        this(name, waterVolume, reading, Turn.BY_RANK);
    }

    public SupplyState(String name, Volume waterVolume, GaugePressure reading, boolean heldBack) {
        this(name, waterVolume, reading, heldBack ? Turn.HELD_BACK : Turn.BY_RANK);
    }

    /** Those that may be opened, as a fill looks at them: those used first, then the others, each from the lowest reading on. */
    public static List<SupplyState> inOrderOfUse(List<SupplyState> bank) {
        return bank.stream()
                .filter(supply -> !supply.heldBack())
                .sorted(Comparator.comparing((SupplyState supply) -> supply.turn() != Turn.FIRST)
                        .thenComparing(SupplyState::reading))
                .toList();
    }

    /** Whether it must not be opened. */
    public boolean heldBack() {
        return turn == Turn.HELD_BACK;
    }

    public SupplyState holdBack() {
        return in(Turn.HELD_BACK);
    }

    public SupplyState in(Turn other) {
        return new SupplyState(name, waterVolume, reading, other);
    }
}
