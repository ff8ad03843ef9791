package org.lowfirst.planning.session;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/**
 * Why one bottle comes before another on a supply: what the other way round would do, all else kept.
 *
 * @param first the bottle that comes first
 * @param second the bottle that comes after it
 * @param supply the supply
 * @param wouldMiss a bottle that would no longer be ready; null when all still would
 * @param shortBy how far it would end below its stop; null with {@code wouldMiss}
 * @param gasLost gas above the highest stop that the other way round would cost
 * @param changesLost hose changes and supplies opened that the other way round would cost, may be negative
 */
public record OrderReason(
        String first,
        String second,
        String supply,
        @Nullable String wouldMiss,
        @Nullable GaugePressure shortBy,
        Amount gasLost,
        int changesLost) {}
