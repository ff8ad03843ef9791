package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.warm.WarmRefusal;

/** Looks at what was asked before anything is computed. Each method answers the first thing wrong, or null. */
final class WarmCheck {

    private static final Volume SMALLEST = Volume.ofLitres(0.05);
    private static final Volume LARGEST = Volume.ofLitres(3_000.0);

    private WarmCheck() {}

    static @Nullable WarmRefusal air(String what, Temperature measured) {
        return temperature(what, measured, "lowest-air", "highest-air");
    }

    static @Nullable WarmRefusal gas(String what, Temperature measured) {
        return temperature(what, measured, "lowest-gas", "highest-gas");
    }

    private static @Nullable WarmRefusal temperature(String what, Temperature measured, String lowest, String highest) {
        double low = Assumptions.kelvin(lowest);
        double high = Assumptions.kelvin(highest);
        return measured.kelvin() >= low && measured.kelvin() <= high
                ? null
                : new WarmRefusal.TemperatureOutOfRange(what, measured, new Temperature(low), new Temperature(high));
    }

    static @Nullable WarmRefusal reading(String what, GaugePressure measured) {
        return pressure(what, measured, GaugePressure.ZERO);
    }

    /** A reading that must be above zero. */
    static @Nullable WarmRefusal rating(String what, GaugePressure measured) {
        return pressure(what, measured, GaugePressure.ofBar(1.0));
    }

    private static @Nullable WarmRefusal pressure(String what, GaugePressure measured, GaugePressure lowest) {
        GaugePressure highest = new GaugePressure(Assumptions.pascals("highest-reading"));
        return measured.compareTo(lowest) >= 0 && measured.compareTo(highest) <= 0
                ? null
                : new WarmRefusal.PressureOutOfRange(what, measured, lowest, highest);
    }

    static @Nullable WarmRefusal volume(String what, Volume measured) {
        return measured.compareTo(SMALLEST) >= 0 && measured.compareTo(LARGEST) <= 0
                ? null
                : new WarmRefusal.NumberOutOfRange(
                        what, measured.toLitres(), SMALLEST.toLitres(), LARGEST.toLitres(), "L");
    }

    static @Nullable WarmRefusal number(String what, double measured, double lowest, double highest, String unit) {
        return measured >= lowest && measured <= highest
                ? null
                : new WarmRefusal.NumberOutOfRange(what, measured, lowest, highest, unit);
    }

    static @Nullable WarmRefusal bottle(RatedBottle bottle) {
        return first(
                volume("water volume of bottle " + bottle.name(), bottle.waterVolume()),
                rating("service pressure of bottle " + bottle.name(), bottle.servicePressure()));
    }

    static @Nullable WarmRefusal compensation(Compensation compensation) {
        if (compensation instanceof Compensation.On on) {
            if (on.rule().isBlank()) {
                return new WarmRefusal.NameMissing("rule or table that warm-stop compensation follows");
            }
            if (on.by().isBlank()) {
                return new WarmRefusal.NameMissing("person who turned warm-stop compensation on");
            }
        }
        return null;
    }

    static @Nullable WarmRefusal first(@Nullable WarmRefusal... found) {
        for (WarmRefusal refusal : found) {
            if (refusal != null) {
                return refusal;
            }
        }
        return null;
    }
}
