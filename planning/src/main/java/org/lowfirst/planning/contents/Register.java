package org.lowfirst.planning.contents;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.contents.ReadingOutcome.ReadingAdvice;
import org.lowfirst.planning.contents.ReadingOutcome.Refused;
import org.lowfirst.planning.contents.ReadingOutcome.Rule;

/** The cylinders and gauges of a bench by name. */
final class Register {

    private final Map<String, MeteredCylinder> cylinders;
    private final Map<String, Gauge> gauges;

    Register(Collection<MeteredCylinder> cylinders, Collection<Gauge> gauges) {
        this.cylinders = byName(cylinders, MeteredCylinder::name, "cylinder");
        this.gauges = byName(gauges, Gauge::name, "gauge");
    }

    private static <T> Map<String, T> byName(Collection<T> things, Function<T, String> name, String what) {
        Map<String, T> byName = new LinkedHashMap<>();
        for (T thing : things) {
            if (byName.put(name.apply(thing), thing) != null) {
                throw new IllegalArgumentException(
                        "The " + what + " (" + name.apply(thing) + ") must be named once only.");
            }
        }
        return byName;
    }

    boolean hasCylinder(String name) {
        return cylinders.containsKey(name);
    }

    MeteredCylinder cylinder(String name) {
        MeteredCylinder found = cylinders.get(name);
        if (found == null) {
            throw new IllegalArgumentException("The cylinder (" + name + ") must be registered.");
        }
        return found;
    }

    Gauge gauge(String name) {
        Gauge found = gauges.get(name);
        if (found == null) {
            throw new IllegalArgumentException("The gauge (" + name + ") must be registered.");
        }
        return found;
    }

    Map<String, Gauge> gauges() {
        return gauges;
    }

    /** Why a reading's names cannot be used; null when they can. */
    @Nullable
    Refused unknownIn(GaugeReading reading) {
        if (!cylinders.containsKey(reading.cylinder())) {
            return unknown(Rule.UNKNOWN_CYLINDER, reading);
        }
        return gauges.containsKey(reading.gauge()) ? null : unknown(Rule.UNKNOWN_GAUGE, reading);
    }

    static Refused unknown(Rule rule, @Nullable GaugeReading reading) {
        return new Refused(reading, rule, 0.0, 0.0, "", ReadingAdvice.REGISTER_IT_FIRST);
    }
}
