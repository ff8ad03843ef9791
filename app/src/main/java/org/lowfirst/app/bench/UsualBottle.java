package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedPressure;

/**
 * The kind of bottle a bench has most of: bottles of one size and target are one kind. Fills left are told for it when nobody
 * names a bottle.
 *
 * @param bottle one of that kind
 * @param target what it is usually filled to
 * @param found what it is taken to be found at
 */
public record UsualBottle(Bottle bottle, StatedPressure target, StatedPressure found) {

    /** A bottle that comes to be filled is taken to be found at this part of its target (common practice, no source). */
    private static final BigDecimal FOUND_AT = new BigDecimal("0.25");

    /** Empty when no bottle is in use. */
    public static Optional<UsualBottle> of(Bench bench) {
        Map<String, List<Bottle>> kinds = new LinkedHashMap<>();
        bench.listBottles().stream()
                .filter(Bottle::inUse)
                .forEach(bottle -> kinds.computeIfAbsent(kind(bottle), kind -> new ArrayList<>())
                        .add(bottle));
        return kinds.values().stream()
                .max(Comparator.comparingInt(List::size))
                .map(same -> same.get(0))
                .map(bottle -> new UsualBottle(bottle, target(bottle), found(target(bottle))));
    }

    /** Its reading at the bench's usual temperature, as it is taken to be found. */
    Reading before(Settings settings, Instant at) {
        return new Reading(found, at, settings.surroundings().usualTemperature(), true, null);
    }

    private static StatedPressure found(StatedPressure target) {
        return new StatedPressure(target.value().multiply(FOUND_AT), target.unit());
    }

    private static String kind(Bottle bottle) {
        StatedPressure target = target(bottle);
        return bottle.details().waterVolume().stated().volume().cubicMetres() + " "
                + target.gauge().pascals();
    }

    private static StatedPressure target(Bottle bottle) {
        StatedPressure usual = bottle.details().usualTarget();
        return usual == null ? bottle.details().servicePressure() : usual;
    }
}
