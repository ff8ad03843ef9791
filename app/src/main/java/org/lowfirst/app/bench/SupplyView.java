package org.lowfirst.app.bench;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Standing;
import org.lowfirst.station.Supply;

/**
 * One supply of the bank as it stands now.
 *
 * @param bank name of the bank it stands in; empty for the one without a name
 * @param rank place in its bank, 1 = lowest pressure
 * @param standing when it is opened
 * @param estimate what its gauge should show now at the bench's usual temperature
 * @param estimated false when {@code estimate} is simply the latest reading at that temperature
 * @param contents gas inside
 * @param level contents as a share of what a full supply holds, 0 to 1 and a little above; null when unknown
 * @param age time since the latest reading
 */
public record SupplyView(
        Supply supply,
        String bank,
        int rank,
        Standing standing,
        GaugePressure estimate,
        boolean estimated,
        Amount contents,
        @Nullable Double level,
        Duration age) {}
