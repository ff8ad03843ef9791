package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * One supply open to one bottle, as it happened.
 *
 * @param bottleAfter bottle gauge when the valves were shut
 * @param supplyBefore supply gauge before opening, when read
 * @param supplyAfter supply gauge after shutting, when read
 */
public record Stage(
        SupplyId supply,
        Reading bottleAfter,
        @Nullable Reading supplyBefore,
        @Nullable Reading supplyAfter) {}
