package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be written on a cylinder. */
final class CylinderRules {

    private CylinderRules() {}

    static @Nullable Refused check(SupplyDetails details, RuleFigures figures, Circumstances circumstances) {
        if (details.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "supply");
        }
        return marking(details.name(), details.waterVolume(), details.servicePressure(), figures, circumstances);
    }

    static @Nullable Refused check(BottleDetails details, RuleFigures figures, Circumstances circumstances) {
        if (details.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "bottle");
        }
        StatedPressure usual = details.usualTarget();
        if (usual != null && usual.compareTo(details.servicePressure()) > 0) {
            return new Refused(
                    Rule.USUAL_TARGET_ABOVE_SERVICE_PRESSURE, details.name(), usual, details.servicePressure());
        }
        if (usual != null && usual.value().signum() <= 0) {
            return new Refused(Rule.TARGET_NOT_ABOVE_ZERO, details.name(), usual, null);
        }
        return marking(details.name(), details.waterVolume(), details.servicePressure(), figures, circumstances);
    }

    private static @Nullable Refused marking(
            String name, WaterVolume water, StatedPressure service, RuleFigures figures, Circumstances circumstances) {
        StatedVolume stated = water.stated();
        if (stated.value().signum() <= 0) {
            return new Refused(Rule.WATER_VOLUME_NOT_ABOVE_ZERO, name, stated, null);
        }
        if (service.value().signum() <= 0) {
            return new Refused(Rule.SERVICE_PRESSURE_NOT_ABOVE_ZERO, name, service, null);
        }
        if (!circumstances.confirmed()) {
            StatedVolume lowest = figures.lowestWaterVolume();
            StatedVolume highest = figures.highestWaterVolume();
            if (stated.volume().compareTo(lowest.volume()) < 0) {
                return new Refused(Rule.WATER_VOLUME_UNUSUAL, name, stated, lowest);
            }
            if (stated.volume().compareTo(highest.volume()) > 0) {
                return new Refused(Rule.WATER_VOLUME_UNUSUAL, name, stated, highest);
            }
        }
        return servicePressure(name, service, figures, circumstances);
    }

    static @Nullable Refused servicePressure(
            String name, StatedPressure service, RuleFigures figures, Circumstances circumstances) {
        if (service.compareTo(figures.possibleServicePressure()) > 0) {
            return new Refused(Rule.SERVICE_PRESSURE_IMPOSSIBLE, name, service, figures.possibleServicePressure());
        }
        if (circumstances.confirmed()) {
            return null;
        }
        if (service.compareTo(figures.lowestServicePressure()) < 0) {
            return new Refused(Rule.SERVICE_PRESSURE_UNUSUAL, name, service, figures.lowestServicePressure());
        }
        if (service.compareTo(figures.highestServicePressure()) > 0) {
            return new Refused(Rule.SERVICE_PRESSURE_UNUSUAL, name, service, figures.highestServicePressure());
        }
        return null;
    }
}
