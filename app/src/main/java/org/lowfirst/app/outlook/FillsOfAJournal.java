package org.lowfirst.app.outlook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.ahead.FilledOn;
import org.lowfirst.planning.ahead.UseHistory;
import org.lowfirst.planning.ahead.UsualFill;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.StatedPressure;

/**
 * Reads the use of a bench from its journal: every bottle that was brought to be filled, finished or not. What is done to one bottle
 * on one day counts once, as long as the bottle was not used in between: a fill broken off and begun again, or the stages of a
 * session. Used once.
 */
final class FillsOfAJournal {

    /** How full a bottle comes that never came: common practice, no source. */
    private static final double USUAL_START = 0.3;

    /** A bottle that reads at least this share of what it was left with has cooled, and was not used. */
    private static final double NOT_USED = 0.85;

    private final Bench bench;
    private final ZoneId zone;
    private final Map<FillId, Brought> brought = new LinkedHashMap<>();
    private final Map<BottleId, FillId> latest = new HashMap<>();
    private final Map<FillId, GaugePressure> left = new HashMap<>();
    private @Nullable Instant first;

    private record Brought(BottleId bottle, LocalDate date, GaugePressure start, GaugePressure target) {}

    private FillsOfAJournal(Bench bench, ZoneId zone) {
        this.bench = bench;
        this.zone = zone;
    }

    /**
     * @param bench the bench the entries lead to
     * @param entries those that count, in the order they count
     * @param zone where the bench stands
     * @param today first day that is not past; fills of today are left out
     */
    static PastUse of(Bench bench, List<Entry> entries, ZoneId zone, LocalDate today) {
        FillsOfAJournal fills = new FillsOfAJournal(bench, zone);
        entries.forEach(fills::take);
        return new PastUse(fills.history(today), fills.usual());
    }

    private void take(Entry entry) {
        Fact fact = entry.fact();
        Instant at = entry.origin().effectiveAt();
        first = first == null || at.isBefore(first) ? at : first;
        LocalDate date = at.atZone(zone).toLocalDate();
        if (fact instanceof Fact.FillStarted f) {
            came(
                    f.fill(),
                    new Brought(
                            f.bottle(),
                            date,
                            f.before().pressure().gauge(),
                            f.target().gauge()));
            left.put(f.fill(), f.before().pressure().gauge());
        } else if (fact instanceof Fact.StageRecorded f) {
            left.put(f.fill(), f.stage().bottleAfter().pressure().gauge());
        } else if (fact instanceof Fact.FillFinished f) {
            left.put(f.fill(), f.after().pressure().gauge());
        } else if (fact instanceof Fact.FillRecorded f) {
            StatedPressure wanted = f.target() == null ? f.after().pressure() : f.target();
            came(f.fill(), new Brought(f.bottle(), date, f.before().pressure().gauge(), wanted.gauge()));
            left.put(f.fill(), f.after().pressure().gauge());
        }
    }

    private void came(FillId id, Brought one) {
        FillId before = latest.put(one.bottle(), id);
        Brought earlier = before == null ? null : brought.get(before);
        GaugePressure leftWith = before == null ? null : left.get(before);
        if (before != null
                && earlier != null
                && leftWith != null
                && earlier.date().equals(one.date())
                && one.start().pascals() >= NOT_USED * leftWith.pascals()) {
            brought.remove(before);
            GaugePressure target = earlier.target().compareTo(one.target()) > 0 ? earlier.target() : one.target();
            brought.put(id, new Brought(one.bottle(), one.date(), earlier.start(), target));
        } else {
            brought.put(id, one);
        }
    }

    private UseHistory history(LocalDate today) {
        if (first == null) {
            return UseHistory.none(today);
        }
        LocalDate from = first.atZone(zone).toLocalDate();
        long days = ChronoUnit.DAYS.between(from, today);
        if (days <= 0) {
            return UseHistory.none(today);
        }
        List<FilledOn> fills = new ArrayList<>();
        brought.forEach((id, one) -> {
            if (one.date().isBefore(today)) {
                fills.add(new FilledOn(one.date(), fill(one)));
            }
        });
        return new UseHistory(from, (int) Math.min(days, Integer.MAX_VALUE), fills);
    }

    private UsualFill fill(Brought one) {
        BottleDetails details = bench.getBottle(one.bottle()).details();
        return new UsualFill(
                details.name(),
                details.waterVolume().stated().volume(),
                details.servicePressure().gauge(),
                one.start(),
                one.target());
    }

    /** With the mean of the readings each came with. */
    private List<UsualFill> usual() {
        return bench.listBottles().stream()
                .filter(Bottle::inUse)
                .map(this::usual)
                .toList();
    }

    private UsualFill usual(Bottle bottle) {
        BottleDetails details = bottle.details();
        StatedPressure wanted = details.usualTarget() == null ? details.servicePressure() : details.usualTarget();
        double start_Pa = brought.values().stream()
                .filter(one -> one.bottle().equals(bottle.id()))
                .mapToDouble(one -> one.start().pascals())
                .average()
                .orElse(USUAL_START * wanted.gauge().pascals());
        return new UsualFill(
                details.name(),
                details.waterVolume().stated().volume(),
                details.servicePressure().gauge(),
                new GaugePressure(Math.min(start_Pa, wanted.gauge().pascals())),
                wanted.gauge());
    }
}
