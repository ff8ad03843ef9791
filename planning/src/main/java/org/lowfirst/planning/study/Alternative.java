package org.lowfirst.planning.study;

import org.jspecify.annotations.Nullable;

/**
 * One way to run the bench.
 *
 * @param name one of a kind within the study
 * @param bankSize supplies connected
 * @param stored full supplies kept beside the bank
 * @param supply the kind that is rented
 * @param habit when and how many are exchanged
 * @param booster null for none
 */
public record Alternative(
        String name,
        int bankSize,
        int stored,
        SupplyKind supply,
        ExchangeHabit habit,
        @Nullable Booster booster) {

    /** Nothing in store, no booster. */
    public Alternative(String name, int bankSize, SupplyKind supply, ExchangeHabit habit) {
        this(name, bankSize, 0, supply, habit, null);
    }

    /** Cylinders on site: each is connected, full in store, or waits to be fetched. */
    public int places() {
        return bankSize + stored;
    }
}
