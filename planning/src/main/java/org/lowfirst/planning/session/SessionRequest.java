package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.SupplyState;

/**
 * Several bottles, one bank.
 *
 * @param supplies the bank in any order; one held back is not opened, one used first is opened before those of lower rank
 * @param bottles the bottles as listed
 * @param order what decides after the number ready, most important first; criteria left out follow in their usual order
 * @param pace how long things take
 * @param fullSupply what a full supply reads, to advise exchanges; null when unknown
 */
public record SessionRequest(
        List<SupplyState> supplies,
        List<SessionBottle> bottles,
        List<Criterion> order,
        SessionPace pace,
        @Nullable GaugePressure fullSupply) {

    public SessionRequest {
        supplies = List.copyOf(supplies);
        bottles = List.copyOf(bottles);
        List<Criterion> all = new ArrayList<>(order);
        for (Criterion criterion : Criterion.values()) {
            if (!all.contains(criterion)) {
                all.add(criterion);
            }
        }
        order = all.stream().distinct().toList();
    }

    public SessionRequest(List<SupplyState> supplies, List<SessionBottle> bottles) {
        this(supplies, bottles, List.of(), SessionPace.UNHURRIED, null);
    }
}
