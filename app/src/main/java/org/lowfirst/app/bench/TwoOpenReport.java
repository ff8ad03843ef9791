package org.lowfirst.app.bench;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.station.Fact;

/**
 * What it meant that two supplies were open together, at the bench's usual temperature.
 *
 * @param fact what was entered
 * @param firstBefore what the first should have shown just before
 * @param secondBefore what the second should have shown just before
 * @param level where the two meet when nothing leaves them
 * @param firstNow what the first should show since, by its gauge when it was read
 * @param secondNow what the second should show since, by its gauge when it was read
 * @param moved gas that went over from the fuller to the emptier, as reckoned
 * @param cost what that costs in fills; null when there is no bottle to count with
 */
public record TwoOpenReport(
        Fact.TwoOpenedTogether fact,
        GaugePressure firstBefore,
        GaugePressure secondBefore,
        GaugePressure level,
        GaugePressure firstNow,
        GaugePressure secondNow,
        Amount moved,
        @Nullable Cost cost) {

    /**
     * @param usual the bottle counted with
     * @param before fills left just before, and the gas above its stop, which alone can finish a bottle
     * @param after the same since
     */
    public record Cost(UsualBottle usual, Useful before, Useful after) {

        /** Gas that can no longer finish a bottle, at least zero. */
        public Amount lost() {
            return new Amount(Math.max(0.0, before.gas().moles() - after.gas().moles()));
        }
    }

    /**
     * @param fills fills left of the usual bottle
     * @param gas gas in the supplies above the stop of the usual bottle
     */
    public record Useful(FillsLeft fills, Amount gas) {}
}
