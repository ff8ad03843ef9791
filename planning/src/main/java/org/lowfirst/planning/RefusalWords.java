package org.lowfirst.planning;

import java.util.Map;
import org.lowfirst.planning.PlanRefused.AmbientOutOfRange;
import org.lowfirst.planning.PlanRefused.BottleAboveLimit;
import org.lowfirst.planning.PlanRefused.DuplicateName;
import org.lowfirst.planning.PlanRefused.EmptyBank;
import org.lowfirst.planning.PlanRefused.FloorAboveStop;
import org.lowfirst.planning.PlanRefused.NameMissing;
import org.lowfirst.planning.PlanRefused.NoAnswer;
import org.lowfirst.planning.PlanRefused.PressureOutOfRange;
import org.lowfirst.planning.PlanRefused.ServicePressureMissing;
import org.lowfirst.planning.PlanRefused.SupplyUnknown;
import org.lowfirst.planning.PlanRefused.TemperatureOutOfRange;
import org.lowfirst.planning.PlanRefused.TooMany;
import org.lowfirst.planning.PlanRefused.VolumeOutOfRange;
import org.lowfirst.planning.words.Phrases;

/** Refusals as sentences. */
final class RefusalWords {

    private final ShownUnits units;
    private final Phrases phrases;

    private RefusalWords(ShownUnits units) {
        this.units = units;
        phrases = units.phrases();
    }

    static String of(PlanRefused refused, ShownUnits units) {
        return new RefusalWords(units).of(refused);
    }

    private String of(PlanRefused refused) {
        if (refused instanceof EmptyBank) {
            return phrases.text("refused.empty-bank", Map.of());
        }
        if (refused instanceof TooMany r) {
            return phrases.text(
                    "refused.too-many",
                    Map.of(
                            "measured", Integer.toString(r.measured()),
                            "what", phrases.noun(r.what()),
                            "limit", Integer.toString(r.limit())));
        }
        if (refused instanceof NameMissing r) {
            return phrases.text(
                    "refused.name-missing",
                    Map.of("what", phrases.noun(r.what()), "place", Integer.toString(r.place())));
        }
        if (refused instanceof DuplicateName r) {
            return phrases.text("refused.duplicate-name", Map.of("name", r.name(), "what", phrases.noun(r.what())));
        }
        if (refused instanceof SupplyUnknown r) {
            return phrases.text("refused.supply-unknown", Map.of("name", r.name()));
        }
        if (refused instanceof ServicePressureMissing r) {
            return phrases.text("refused.service-pressure-missing", Map.of("bottle", r.bottle()));
        }
        if (refused instanceof BottleAboveLimit r) {
            return phrases.text(
                    "refused.bottle-above-limit",
                    Map.of(
                            "bottle", r.bottle(),
                            "measured", units.show(r.measured()),
                            "limit", units.show(r.limit()),
                            "service", units.show(r.servicePressure())));
        }
        if (refused instanceof FloorAboveStop r) {
            return phrases.text(
                    "refused.floor-above-stop",
                    Map.of(
                            "bottle", r.bottle(),
                            "measured", units.show(r.measured()),
                            "stop", units.show(r.stop())));
        }
        return rangeWords(refused);
    }

    private String rangeWords(PlanRefused refused) {
        if (refused instanceof VolumeOutOfRange r) {
            return range(
                    "refused.out-of-range",
                    r.what(),
                    units.show(r.measured()),
                    units.show(r.lowest()),
                    units.show(r.highest()));
        }
        if (refused instanceof PressureOutOfRange r) {
            return range(
                    "refused.out-of-range",
                    r.what(),
                    units.show(r.measured()),
                    units.show(r.lowest()),
                    units.show(r.highest()));
        }
        if (refused instanceof AmbientOutOfRange r) {
            return range(
                    "refused.ambient", "", units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refused instanceof TemperatureOutOfRange r) {
            return range(
                    "refused.temperature",
                    r.what(),
                    units.show(r.measured()),
                    units.show(r.lowest()),
                    units.show(r.highest()));
        }
        if (refused instanceof NoAnswer r) {
            return phrases.text("refused.no-answer", Map.of("reason", r.reason()));
        }
        throw new AssertionError("unhandled " + refused);
    }

    private String range(String key, String what, String measured, String lowest, String highest) {
        return phrases.text(
                key, Map.of("what", phrases.noun(what), "measured", measured, "lowest", lowest, "highest", highest));
    }
}
