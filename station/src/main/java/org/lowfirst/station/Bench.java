package org.lowfirst.station;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * State of one bench: the fold of its entries. Immutable.
 *
 * @param supplies every supply ever connected, in order of connection
 * @param bottles every bottle ever registered, in order of registration
 * @param openFills fills begun and not ended; more than one only when two clients worked apart
 */
public record Bench(
        BenchId id,
        Settings settings,
        Map<SupplyId, Supply> supplies,
        Map<BottleId, Bottle> bottles,
        Map<FillId, OpenFill> openFills) {

    public Bench {
        supplies = ordered(supplies);
        bottles = ordered(bottles);
        openFills = ordered(openFills);
    }

    private static <K, V> Map<K, V> ordered(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /** The supplies connected now, in order of connection. */
    public List<Supply> bank() {
        return supplies.values().stream().filter(Supply::connected).toList();
    }

    public Collection<Bottle> listBottles() {
        return bottles.values();
    }

    public Optional<Supply> findSupply(SupplyId id) {
        return Optional.ofNullable(supplies.get(id));
    }

    public Optional<Bottle> findBottle(BottleId id) {
        return Optional.ofNullable(bottles.get(id));
    }

    /** @throws NoSuchElementException when it was never connected */
    public Supply getSupply(SupplyId id) {
        return findSupply(id).orElseThrow(() -> new NoSuchElementException("There is no supply " + id + "."));
    }

    /** @throws NoSuchElementException when it was never registered */
    public Bottle getBottle(BottleId id) {
        return findBottle(id).orElseThrow(() -> new NoSuchElementException("There is no bottle " + id + "."));
    }

    public Optional<OpenFill> findOpenFill(FillId id) {
        return Optional.ofNullable(openFills.get(id));
    }

    /** The fill to resume, when one is open. */
    public Optional<OpenFill> openFill() {
        return openFills.values().stream().findFirst();
    }
}
