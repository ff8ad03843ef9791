package org.lowfirst.web.session;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.session.Criterion;
import org.lowfirst.planning.session.SessionBottle;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;

/** The fields of the session form: one group for each chosen bottle. */
final class SessionFields {

    private static final int LOWEST_PRIORITY = 9;

    private SessionFields() {}

    static List<Bottle> chosen(BenchNow now, Map<String, String> typed) {
        return now.bench().listBottles().stream()
                .filter(Bottle::inUse)
                .filter(bottle -> "yes".equals(typed.get("in-" + bottle.id())))
                .toList();
    }

    /** What is filled in beforehand: the latest reading and the usual target of each. */
    static Map<String, String> filled(BenchNow now, List<Bottle> chosen, Map<String, String> typed) {
        Map<String, String> fields = new HashMap<>(typed);
        for (Bottle bottle : chosen) {
            Reading latest = bottle.latest();
            if (latest != null) {
                fields.putIfAbsent("reading-" + bottle.id(), now.figures().toType(latest.pressure()));
            }
            fields.putIfAbsent("target-" + bottle.id(), now.figures().toType(wanted(bottle.details())));
            fields.putIfAbsent("priority-" + bottle.id(), "1");
        }
        return fields;
    }

    private static StatedPressure wanted(BottleDetails details) {
        StatedPressure usual = details.usualTarget();
        return usual == null ? details.servicePressure() : usual;
    }

    /** The bottles as the planner takes them; fewer than were chosen when something cannot be read. */
    static List<SessionBottle> read(Reader reader, BenchNow now, List<Bottle> chosen) {
        List<SessionBottle> bottles = new ArrayList<>();
        for (Bottle bottle : chosen) {
            @Nullable StatedPressure reads = reader.pressure("reading-" + bottle.id());
            @Nullable StatedPressure target = reader.pressure("target-" + bottle.id());
            @Nullable StatedPressure floor = reader.pressureIfTyped("floor-" + bottle.id());
            int priority = priority(reader, now, "priority-" + bottle.id());
            if (reads != null) {
                now.offScale(bottle.id(), reads)
                        .ifPresent(sentence -> reader.fault("reading-" + bottle.id(), sentence));
            }
            if (floor != null && target != null && floor.compareTo(target) > 0) {
                reader.fault(
                        "floor-" + bottle.id(),
                        now.words()
                                .of(
                                        "fault.floor",
                                        now.figures().asTyped(floor),
                                        now.figures().asTyped(target)));
            }
            if (reads != null && target != null) {
                bottles.add(new SessionBottle(
                        new BottleToFill(
                                bottle.details().name(),
                                bottle.details().waterVolume().stated().volume(),
                                reads.gauge(),
                                target.gauge(),
                                bottle.details().servicePressure().gauge()),
                        priority,
                        floor == null ? null : floor.gauge()));
            }
        }
        return bottles;
    }

    static int priority(Reader reader, BenchNow now, String field) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        if (typed == null) {
            return 1;
        }
        boolean whole = typed.stripTrailingZeros().scale() <= 0;
        if (!whole || typed.signum() <= 0 || typed.compareTo(BigDecimal.valueOf(LOWEST_PRIORITY)) > 0) {
            reader.fault(field, now.words().of("fault.priority", reader.text(field), LOWEST_PRIORITY));
            return 1;
        }
        return typed.intValue();
    }

    static List<Criterion> order(Map<String, String> typed) {
        return switch (typed.getOrDefault("order", "")) {
            case "gas" -> List.of(Criterion.GAS);
            case "changes" -> List.of(Criterion.CHANGES);
            case "time" -> List.of(Criterion.TIME);
            default -> List.of();
        };
    }

    /** The field that a refusal is about. */
    static String fieldOf(PlanRefused why, List<Bottle> chosen) {
        if (why instanceof PlanRefused.BottleAboveLimit above) {
            return "reading-" + id(above.bottle(), chosen);
        }
        if (why instanceof PlanRefused.FloorAboveStop floor) {
            return "floor-" + id(floor.bottle(), chosen);
        }
        return "form";
    }

    private static String id(String name, List<Bottle> chosen) {
        return chosen.stream()
                .filter(bottle -> bottle.details().name().equals(name))
                .map(bottle -> bottle.id().value())
                .findFirst()
                .orElse("");
    }
}
