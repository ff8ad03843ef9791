package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.station.Bench;

/**
 * The bank as it stands now.
 *
 * @param supplies the connected supplies, rank 1 first
 */
public record BankView(Bench bench, List<SupplyView> supplies) {

    public BankView {
        supplies = List.copyOf(supplies);
    }
}
