package org.lowfirst.app.honest;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeAccuracy;
import org.lowfirst.planning.contents.GaugeScale;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;

/**
 * The gauges of a bench as its journal goes on, each under a key of its own. A gauge that was calibrated anew counts as another,
 * because its lasting error may be another. Mutable.
 */
final class GaugeShelf {

    /** What stands behind a key: details, or null for a gauge nobody described. */
    record Shelved(
            Gauge gauge,
            String name,
            GaugeUse use,
            @Nullable GaugeDetails details) {}

    private final PressureUnit unit;
    private final Map<String, GaugeDetails> inUse = new LinkedHashMap<>();
    private final Map<GaugeUse, String> firstKeys = new LinkedHashMap<>();
    private final Map<String, GaugeDetails> described = new LinkedHashMap<>();
    private final Map<GaugeUse, GaugePressure> assumed = new LinkedHashMap<>();

    GaugeShelf(PressureUnit unit) {
        this.unit = unit;
    }

    /** Every description of the journal, before it is gone through: a gauge was there before somebody described it. */
    void foresee(GaugeDetails details) {
        firstKeys.putIfAbsent(details.use(), key(details));
        described.put(key(details), details);
    }

    /** A gauge in use now whose description is older than the entries gone through; known beforehand when it is not. */
    void wasThere(GaugeDetails details) {
        if (!described.containsKey(key(details))) {
            foresee(details);
            describe(details);
        }
    }

    void describe(GaugeDetails details) {
        inUse.put(details.name(), details);
    }

    void retire(String name) {
        inUse.remove(name);
    }

    /** Key of the gauge a reading was taken from: the one it names, the one usually read there, or one taken for granted. */
    String key(CylinderId cylinder, Reading reading) {
        GaugeUse use = cylinder instanceof SupplyId ? GaugeUse.SUPPLIES : GaugeUse.BOTTLES;
        GaugeDetails named = reading.gauge() == null ? null : inUse.get(reading.gauge());
        if (named != null) {
            return key(named);
        }
        if (reading.gauge() == null) {
            for (GaugeDetails gauge : inUse.values()) {
                if (gauge.use() == use) {
                    return key(gauge);
                }
            }
            String first = firstKeys.get(use);
            if (first != null) {
                return first;
            }
        }
        GaugePressure shown = reading.pressure().gauge();
        assumed.merge(use, shown, (a, b) -> a.compareTo(b) >= 0 ? a : b);
        return assumedKey(use);
    }

    static String key(GaugeDetails details) {
        LocalDate day = details.calibrated();
        return "described " + details.name() + (day == null ? "" : " calibrated " + day);
    }

    static String assumedKey(GaugeUse use) {
        return "assumed " + use;
    }

    /** Every gauge that was described or taken for granted, by key. */
    Map<String, Shelved> all() {
        Map<String, Shelved> all = new LinkedHashMap<>();
        described.forEach((key, details) ->
                all.put(key, new Shelved(gauge(key, details), details.name(), details.use(), details)));
        assumed.forEach((use, highest) -> all.put(assumedKey(use), assumed(use, highest)));
        return all;
    }

    private Shelved assumed(GaugeUse use, GaugePressure highest) {
        String key = assumedKey(use);
        return new Shelved(JournalAssumptions.STANDARD.gauge(key, unit, highest), "", use, null);
    }

    /** Keys of the gauges in use now. */
    List<String> current() {
        List<String> keys = new ArrayList<>();
        inUse.values().forEach(details -> keys.add(key(details)));
        return keys;
    }

    static Gauge gauge(String key, GaugeDetails details) {
        StatedPressure full = details.fullScale();
        GaugeScale scale =
                new GaugeScale(full.unit(), full.gauge(), details.division().gauge());
        BigDecimal percent = details.classPercent();
        GaugeAccuracy accuracy = percent == null
                ? new GaugeAccuracy.Stated(
                        Objects.requireNonNull(details.error(), "error").gauge())
                : new GaugeAccuracy.OfFullScale(percent.doubleValue());
        LocalDate day = details.calibrated();
        Instant calibrated =
                day == null ? null : day.atStartOfDay(ZoneOffset.UTC).toInstant();
        return new Gauge(key, scale, accuracy, calibrated, null);
    }
}
