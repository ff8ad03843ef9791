package org.lowfirst.planning.study;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.PlanRefused;

/** Looks at a request piece by piece and keeps the first objection. Mutable, used by one thread. */
public final class Checking {

    /** What a vessel or a price can be meant to be. All of these: common practice, no source. */
    private static final Volume SMALLEST_VESSEL = Volume.ofLitres(0.05);

    private static final Volume LARGEST_BOTTLE = Volume.ofLitres(300.0);
    private static final Volume LARGEST_SUPPLY = Volume.ofLitres(3_000.0);
    private static final double HIGHEST_PRICE = 1e9;
    private static final double LEAST_SHARE = 0.001;
    private static final double MOST_SHARE = 1e6;

    private @Nullable Objection first;

    /** The first objection, empty when there is none. */
    public Optional<Objection> first() {
        return Optional.ofNullable(first);
    }

    public boolean clear() {
        return first == null;
    }

    /** Within both ends; not a number is outside. */
    public Checking number(String what, double measured, double lowest, double highest, String unit) {
        if (!(measured >= lowest && measured <= highest)) {
            object(new Objection.NumberOutOfRange(what, measured, lowest, highest, unit));
        }
        return this;
    }

    public Checking price(String what, double measured) {
        return number(what, measured, 0.0, HIGHEST_PRICE, "");
    }

    /** How often one of several comes, against the others. */
    public Checking share(String what, double measured) {
        return number(what, measured, LEAST_SHARE, MOST_SHARE, "");
    }

    public Checking pressure(String what, GaugePressure measured, GaugePressure lowest, GaugePressure highest) {
        if (measured.compareTo(lowest) < 0 || measured.compareTo(highest) > 0) {
            object(new Objection.PressureOutOfRange(what, measured, lowest, highest));
        }
        return this;
    }

    public Checking temperature(String what, Temperature measured, Temperature lowest, Temperature highest) {
        if (measured.compareTo(lowest) < 0 || measured.compareTo(highest) > 0) {
            object(new Objection.TemperatureOutOfRange(what, measured, lowest, highest));
        }
        return this;
    }

    public Checking bottleVolume(String what, Volume measured) {
        return volume(what, measured, SMALLEST_VESSEL, LARGEST_BOTTLE);
    }

    public Checking supplyVolume(String what, Volume measured) {
        return volume(what, measured, SMALLEST_VESSEL, LARGEST_SUPPLY);
    }

    public Checking volume(String what, Volume measured, Volume lowest, Volume highest) {
        if (measured.compareTo(lowest) < 0 || measured.compareTo(highest) > 0) {
            object(new Objection.VolumeOutOfRange(what, measured, lowest, highest));
        }
        return this;
    }

    /** Every one of a kind, none blank. */
    public Checking names(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (name.isBlank() || !seen.add(name)) {
                object(new Objection.NameNotItsOwn(what, name));
            }
        }
        return this;
    }

    /**
     * @param rule ends the sentence "The (what) must ..."
     */
    public Checking that(boolean holds, String what, String rule) {
        if (!holds) {
            object(new Objection.Unfitting(what, rule));
        }
        return this;
    }

    /** Keeps what the planner of one fill has to say about its conditions. */
    public Checking refused(PlanRefused why) {
        object(new Objection.ConditionsRefused(why));
        return this;
    }

    private void object(Objection objection) {
        if (first == null) {
            first = objection;
        }
    }
}
