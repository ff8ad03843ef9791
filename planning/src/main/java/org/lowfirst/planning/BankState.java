package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/** The supplies in rank order, with their gas counted. Immutable. */
final class BankState {

    private final List<RankedSupply> supplies;

    private BankState(List<RankedSupply> supplies) {
        this.supplies = List.copyOf(supplies);
    }

    /** Counts the gas behind the readings and ranks the supplies. */
    static BankState of(List<SupplyState> found, Settled settled) {
        List<RankedSupply> counted = new ArrayList<>(found.size());
        for (SupplyState supply : found) {
            double rho_molPerM3 = settled.density_molPerM3(supply.reading());
            counted.add(new RankedSupply(
                    0,
                    supply.name(),
                    supply.waterVolume(),
                    supply.reading(),
                    new Amount(rho_molPerM3 * supply.waterVolume().cubicMetres()),
                    supply.turn()));
        }
        return ranked(counted);
    }

    /** Ranks supplies whose gas is counted; equal readings keep their order. */
    static BankState ranked(List<RankedSupply> supplies) {
        List<RankedSupply> sorted = new ArrayList<>(supplies);
        sorted.sort(Comparator.comparing(RankedSupply::reading));
        for (int i = 0; i < sorted.size(); i++) {
            sorted.set(i, sorted.get(i).inRank(i + 1));
        }
        return new BankState(sorted);
    }

    List<RankedSupply> supplies() {
        return supplies;
    }

    int size() {
        return supplies.size();
    }

    /** Places of the supplies in the order a fill looks at them: those used first, then the others, each by rank. */
    List<Integer> inOrderOfUse() {
        List<Integer> places = new ArrayList<>(size());
        for (int place = 0; place < size(); place++) {
            places.add(place);
        }
        places.sort(Comparator.comparing(place -> supplies.get(place).turn() != Turn.FIRST));
        return places;
    }

    /** This bank with another supply in the place of the one at {@code index}. */
    BankState exchanged(int index, GaugePressure reading, Settled settled) {
        List<RankedSupply> changed = new ArrayList<>(supplies);
        RankedSupply old = supplies.get(index);
        double rho_molPerM3 = settled.density_molPerM3(reading);
        changed.set(
                index,
                new RankedSupply(
                        0,
                        old.name(),
                        old.waterVolume(),
                        reading,
                        new Amount(rho_molPerM3 * old.waterVolume().cubicMetres()),
                        Turn.BY_RANK));
        return ranked(changed);
    }
}
