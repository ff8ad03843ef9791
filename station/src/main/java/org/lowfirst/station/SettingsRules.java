package org.lowfirst.station;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.VolumeUnit;

/** What a bench can be set to. */
final class SettingsRules {

    /** Surface pressures on inhabited ground, lowest and highest (common practice, no source). */
    private static final StatedAbsolutePressure LOWEST_AMBIENT =
            StatedAbsolutePressure.of("50", PressureUnit.KILOPASCAL);

    private static final StatedAbsolutePressure HIGHEST_AMBIENT =
            StatedAbsolutePressure.of("110", PressureUnit.KILOPASCAL);

    /** More than any filling hose holds (common practice, no source). */
    private static final StatedVolume LARGEST_HOSE = StatedVolume.of("2", VolumeUnit.LITRE);

    private SettingsRules() {}

    static @Nullable Refused check(Settings settings, Circumstances circumstances) {
        if (settings.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "bench");
        }
        if (settings.people().stream().anyMatch(String::isBlank)) {
            return Refused.of(Rule.NAME_EMPTY, "person");
        }
        StatedPressure full = settings.fullSupply();
        if (full.value().signum() <= 0) {
            return new Refused(Rule.FULL_SUPPLY_NOT_ABOVE_ZERO, settings.name(), full, null);
        }
        RuleFigures figures = settings.rules().figures();
        Refused unusual = CylinderRules.servicePressure("full supply", full, figures, circumstances);
        return unusual == null ? surroundings(settings.surroundings(), figures, circumstances) : unusual;
    }

    private static @Nullable Refused surroundings(
            Surroundings surroundings, RuleFigures figures, Circumstances circumstances) {
        StatedAbsolutePressure ambient = surroundings.ambient();
        if (ambient.absolute().compareTo(LOWEST_AMBIENT.absolute()) < 0) {
            return new Refused(Rule.AMBIENT_OUT_OF_RANGE, "", ambient, LOWEST_AMBIENT);
        }
        if (ambient.absolute().compareTo(HIGHEST_AMBIENT.absolute()) > 0) {
            return new Refused(Rule.AMBIENT_OUT_OF_RANGE, "", ambient, HIGHEST_AMBIENT);
        }
        StatedVolume hose = surroundings.hoseVolume();
        if (hose.volume().compareTo(LARGEST_HOSE.volume()) > 0 && !circumstances.confirmed()) {
            return new Refused(Rule.HOSE_VOLUME_UNUSUAL, "", hose, LARGEST_HOSE);
        }
        return ReadingRules.temperature("bench", surroundings.usualTemperature(), figures);
    }
}
