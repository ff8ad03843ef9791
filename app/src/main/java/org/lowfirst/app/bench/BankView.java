package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.station.Bench;

/**
 * The bank as it stands now.
 *
 * @param supplies the connected supplies, bank by bank, rank 1 of each first
 */
public record BankView(Bench bench, List<SupplyView> supplies) {

    /** Names of the banks, the one without a name first; one that is empty when nothing is connected. */
    public List<String> names() {
        List<String> names = bench.bankNames();
        return names.isEmpty() ? List.of("") : names;
    }

    /** The supplies of one bank, rank 1 first. */
    public List<SupplyView> in(String bank) {
        return supplies.stream().filter(view -> view.bank().equals(bank)).toList();
    }

    public BankView {
        supplies = List.copyOf(supplies);
    }
}
