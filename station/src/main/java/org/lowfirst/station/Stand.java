package org.lowfirst.station;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How supplies stand beyond their rank. Immutable.
 *
 * @param standings supplies that are not simply used by their rank
 * @param deliveries what came on paper, by supply
 * @param banks names of the banks of those supplies that stand in a named one
 * @param chosen banks that the latest fills were made from, null for the one without a name; older ones are forgotten
 * @param leaving supplies whose exchange has begun and not ended, first begun first
 * @param exchanged the supply that took the place, by the one that left
 */
public record Stand(
        Map<SupplyId, Standing> standings,
        Map<SupplyId, Delivery> deliveries,
        Map<SupplyId, String> banks,
        Map<FillId, Optional<String>> chosen,
        Set<SupplyId> leaving,
        Map<SupplyId, SupplyId> exchanged) {

    /** Nobody said anything yet. */
    public static final Stand NEW = new Stand(Map.of(), Map.of(), Map.of(), Map.of(), Set.of(), Map.of());

    /** A choice matters until its fill is entered; so many are remembered. */
    private static final int MOST_CHOICES = 64;

    public Stand {
        standings = Map.copyOf(standings);
        deliveries = Map.copyOf(deliveries);
        banks = Map.copyOf(banks);
        chosen = Collections.unmodifiableMap(new LinkedHashMap<>(chosen));
        leaving = Collections.unmodifiableSet(new LinkedHashSet<>(leaving));
        exchanged = Map.copyOf(exchanged);
    }

    /** When a supply is opened. */
    public Standing standing(SupplyId supply) {
        return standings.getOrDefault(supply, Standing.BY_RANK);
    }

    public Turn turn(SupplyId supply) {
        return standing(supply).turn();
    }

    public Delivery delivery(SupplyId supply) {
        return deliveries.getOrDefault(supply, Delivery.UNSAID);
    }

    /** Name of the bank a supply stands in; null for the one without a name. */
    public @Nullable String bank(SupplyId supply) {
        return banks.get(supply);
    }

    /** Name of the bank a supply stands in; empty for the one without a name. */
    public String bankName(SupplyId supply) {
        return banks.getOrDefault(supply, "");
    }

    /** Names of the banks these supplies stand in, the one without a name first. */
    public List<String> bankNames(Collection<SupplyId> supplies) {
        return supplies.stream().map(this::bankName).distinct().sorted().toList();
    }

    /** Name of the bank a fill is made from: the one chosen for it, or else the first there is. */
    public String bankOf(FillId fill, Collection<SupplyId> connected) {
        Optional<String> bank = chosen.get(fill);
        if (bank != null) {
            return bank.orElse("");
        }
        List<String> names = bankNames(connected);
        return names.isEmpty() ? "" : names.get(0);
    }

    /**
     * The supplies that gave a fill of which nobody said the stages: those of its bank that may be planned with, all of the bank
     * when none may be, and any at all when its bank had none then.
     */
    public List<SupplyId> givers(FillId fill, Collection<SupplyId> connected) {
        String bank = bankOf(fill, connected);
        List<SupplyId> all = connected.stream()
                .filter(supply -> bankName(supply).equals(bank))
                .toList();
        List<SupplyId> planned =
                all.stream().filter(supply -> turn(supply).planned()).toList();
        if (all.isEmpty()) {
            return List.copyOf(connected);
        }
        return planned.isEmpty() ? all : planned;
    }

    /** The supply that took the place of one that left. */
    public Optional<SupplyId> findNewcomer(SupplyId left) {
        return Optional.ofNullable(exchanged.get(left));
    }

    /** The state after one more fact; for whoever follows the journal beside the bench. */
    public Stand after(StandFact fact) {
        if (fact instanceof StandFact.SupplyReleased f) {
            return standing(f.supply(), Standing.BY_RANK);
        } else if (fact instanceof StandFact.SupplyHeldBack f) {
            return standing(f.supply(), new Standing(Turn.HELD_BACK, f.reason()));
        } else if (fact instanceof StandFact.SupplyTaggedOut f) {
            return standing(f.supply(), new Standing(Turn.TAGGED_OUT, f.reason()));
        } else if (fact instanceof StandFact.SupplyPutFirst f) {
            return standing(f.supply(), new Standing(Turn.FIRST, ""));
        } else if (fact instanceof StandFact.SupplyDelivered f) {
            Map<SupplyId, Delivery> more = new LinkedHashMap<>(deliveries);
            more.put(f.supply(), f.delivery());
            return new Stand(standings, more, banks, chosen, leaving, exchanged);
        } else if (fact instanceof StandFact.SupplyPlaced f) {
            return placed(f);
        } else if (fact instanceof StandFact.BankChosen f) {
            return chosen(f);
        }
        return exchange(fact);
    }

    private Stand exchange(StandFact fact) {
        Set<SupplyId> under = new LinkedHashSet<>(leaving);
        Map<SupplyId, SupplyId> made = new LinkedHashMap<>(exchanged);
        if (fact instanceof StandFact.ExchangeBegun f) {
            under.add(f.leaving());
        } else if (fact instanceof StandFact.ExchangeMade f) {
            under.remove(f.left());
            made.put(f.left(), f.newcomer());
        } else if (fact instanceof StandFact.ExchangeBrokenOff f) {
            under.remove(f.leaving());
        } else {
            throw new AssertionError("unhandled " + fact);
        }
        return new Stand(standings, deliveries, banks, chosen, under, made);
    }

    private Stand standing(SupplyId supply, Standing standing) {
        Map<SupplyId, Standing> more = new LinkedHashMap<>(standings);
        if (standing.turn() == Turn.BY_RANK) {
            more.remove(supply);
        } else {
            more.put(supply, standing);
        }
        return new Stand(more, deliveries, banks, chosen, leaving, exchanged);
    }

    private Stand placed(StandFact.SupplyPlaced f) {
        Map<SupplyId, String> more = new LinkedHashMap<>(banks);
        String bank = f.bank();
        if (bank == null) {
            more.remove(f.supply());
        } else {
            more.put(f.supply(), bank);
        }
        return new Stand(standings, deliveries, more, chosen, leaving, exchanged);
    }

    private Stand chosen(StandFact.BankChosen f) {
        Map<FillId, Optional<String>> more = new LinkedHashMap<>(chosen);
        more.remove(f.fill());
        more.put(f.fill(), Optional.ofNullable(f.bank()));
        while (more.size() > MOST_CHOICES) {
            more.remove(more.keySet().iterator().next());
        }
        return new Stand(standings, deliveries, banks, more, leaving, exchanged);
    }
}
