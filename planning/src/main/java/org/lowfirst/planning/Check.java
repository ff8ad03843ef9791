package org.lowfirst.planning;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/** Looks at what was asked before anything is computed. Each method answers the first thing wrong, or null. */
final class Check {

    private Check() {}

    static @Nullable PlanRefused supplies(List<SupplyState> supplies, GaugePressure highest) {
        if (supplies.isEmpty()) {
            return new PlanRefused.EmptyBank();
        }
        if (supplies.size() > Limits.SUPPLIES) {
            return new PlanRefused.TooMany("supplies", supplies.size(), Limits.SUPPLIES);
        }
        PlanRefused wrongNames =
                names("supply", supplies.stream().map(SupplyState::name).toList());
        if (wrongNames != null) {
            return wrongNames;
        }
        for (SupplyState supply : supplies) {
            PlanRefused wrong =
                    volume("water volume of supply " + supply.name(), supply.waterVolume(), Limits.LARGEST_SUPPLY);
            if (wrong == null) {
                wrong = pressure("reading of supply " + supply.name(), supply.reading(), highest);
            }
            if (wrong != null) {
                return wrong;
            }
        }
        return null;
    }

    static @Nullable PlanRefused bottles(List<BottleToFill> bottles) {
        if (bottles.size() > Limits.BOTTLES) {
            return new PlanRefused.TooMany("bottles", bottles.size(), Limits.BOTTLES);
        }
        return names("bottle", bottles.stream().map(BottleToFill::name).toList());
    }

    static @Nullable PlanRefused bottle(BottleToFill bottle, GaugePressure highest) {
        String of = " of bottle " + bottle.name();
        PlanRefused wrong = volume("water volume" + of, bottle.waterVolume(), Limits.LARGEST_BOTTLE);
        if (wrong == null) {
            wrong = pressure("reading" + of, bottle.reading(), highest);
        }
        if (wrong == null) {
            wrong = pressure("target" + of, bottle.target(), highest);
        }
        if (wrong != null) {
            return wrong;
        }
        GaugePressure service = bottle.servicePressure();
        return service == null
                ? new PlanRefused.ServicePressureMissing(bottle.name())
                : pressure("service pressure" + of, service, highest);
    }

    static @Nullable PlanRefused pressure(String what, GaugePressure measured, GaugePressure highest) {
        return measured.compareTo(GaugePressure.ZERO) < 0 || measured.compareTo(highest) > 0
                ? new PlanRefused.PressureOutOfRange(what, measured, GaugePressure.ZERO, highest)
                : null;
    }

    private static @Nullable PlanRefused volume(String what, Volume measured, Volume highest) {
        return measured.compareTo(Limits.SMALLEST_VESSEL) < 0 || measured.compareTo(highest) > 0
                ? new PlanRefused.VolumeOutOfRange(what, measured, Limits.SMALLEST_VESSEL, highest)
                : null;
    }

    private static @Nullable PlanRefused names(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            if (name.isBlank()) {
                return new PlanRefused.NameMissing(what, i + 1);
            }
            if (!seen.add(name)) {
                return new PlanRefused.DuplicateName(what, name);
            }
        }
        return null;
    }
}
