package org.lowfirst.station;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * State of one bench: the fold of its entries. Immutable.
 *
 * @param supplies every supply ever connected, in order of connection
 * @param bottles every bottle ever registered, in order of registration
 * @param gauges the gauges in use, by name, in the order described
 * @param warmStop permission for warm stops above the marked pressure; null when there is none
 * @param areas everything beside cylinders and fills
 * @param openFills fills begun and not ended; more than one only in a session, or when two clients worked apart
 */
public record Bench(
        BenchId id,
        Settings settings,
        Map<SupplyId, Supply> supplies,
        Map<BottleId, Bottle> bottles,
        Map<FillId, OpenFill> openFills,
        Map<String, GaugeDetails> gauges,
        @Nullable WarmStop warmStop,
        Areas areas) {

    public Bench {
        supplies = ordered(supplies);
        bottles = ordered(bottles);
        openFills = ordered(openFills);
        gauges = ordered(gauges);
    }

    private static <K, V> Map<K, V> ordered(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /** The people on the bench's list and what each may do. */
    public Roster roster() {
        return new Roster(settings.people(), areas.crew().described());
    }

    /** The supplies connected now, in order of connection. */
    public List<Supply> bank() {
        return supplies.values().stream().filter(Supply::connected).toList();
    }

    /** The session under way, or the last one. */
    public Sessions sessions() {
        return areas.sessions();
    }

    /** How supplies stand beyond their rank. */
    public Stand stand() {
        return areas.stand();
    }

    /** Names of the banks of the connected supplies, the one without a name first. */
    public List<String> bankNames() {
        return stand().bankNames(bank().stream().map(Supply::id).toList());
    }

    /** The supplies connected now in one bank, in order of connection. */
    public List<Supply> bank(String name) {
        return bank().stream()
                .filter(supply -> stand().bankName(supply.id()).equals(name))
                .toList();
    }

    /** Name of the bank that is meant when nobody says which. */
    public String usualBank() {
        List<String> names = bankNames();
        return names.isEmpty() ? "" : names.get(0);
    }

    /** Name of the bank a fill is made from. */
    public String bankOf(FillId fill) {
        return stand().bankOf(fill, bank().stream().map(Supply::id).toList());
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

    /** The gauge a reading was taken with: the one it names, or else the one usually read there. */
    public Optional<GaugeDetails> findGauge(CylinderId cylinder, Reading reading) {
        if (reading.gauge() != null) {
            return Optional.ofNullable(gauges.get(reading.gauge()));
        }
        GaugeUse use = cylinder instanceof SupplyId ? GaugeUse.SUPPLIES : GaugeUse.BOTTLES;
        return gauges.values().stream().filter(gauge -> gauge.use() == use).findFirst();
    }

    /** The fill to resume, when one is open: in a session the one that was last on the hose. */
    public Optional<OpenFill> openFill() {
        return sessions()
                .findOpen()
                .map(OpenSession::latest)
                .flatMap(this::findOpenFill)
                .or(() -> openFills.values().stream().findFirst());
    }
}
