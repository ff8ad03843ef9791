package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.station.Bench;
import org.lowfirst.station.SupplyId;

/**
 * How the supplies of one bank stand in a row: in the order they were connected, a newcomer in the place of the one it was
 * exchanged for. Ranks move with the pressures, places do not.
 *
 * @param places the supplies, the first farthest from the bottle
 */
public record Arrangement(List<SupplyView> places) {

    public Arrangement {
        places = List.copyOf(places);
    }

    /** @param bank name of the bank; empty for the one without a name */
    public static Arrangement of(BankView view, String bank) {
        Map<SupplyId, SupplyView> connected = new HashMap<>();
        view.in(bank).forEach(supply -> connected.put(supply.supply().id(), supply));
        List<SupplyView> places = new ArrayList<>();
        for (SupplyId id : row(view.bench())) {
            SupplyView found = connected.get(id);
            if (found != null) {
                places.add(found);
            }
        }
        return new Arrangement(places);
    }

    private static List<SupplyId> row(Bench bench) {
        Map<SupplyId, SupplyId> lefts = new HashMap<>();
        bench.stand().exchanged().forEach((left, newcomer) -> lefts.put(newcomer, left));
        List<SupplyId> row = new ArrayList<>();
        for (SupplyId id : bench.supplies().keySet()) {
            SupplyId left = lefts.get(id);
            int place = left == null ? -1 : row.indexOf(left);
            if (place < 0) {
                row.add(id);
            } else {
                row.set(place, id);
            }
        }
        return row;
    }

    /** How many lines join neighbours: one fewer than there are supplies. */
    public int interconnects() {
        return Math.max(0, places.size() - 1);
    }
}
