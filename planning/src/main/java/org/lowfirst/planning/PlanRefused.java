package org.lowfirst.planning;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Why there is no plan: the measured value, the limit and what to do. Nothing was changed. */
public sealed interface PlanRefused extends PlanOutcome, InOrderOutcome, TogetherOutcome {

    /** Stable name of the rule, lower case with hyphens. */
    String code();

    /** One or two sentences for people: what is wrong, measured value and limit with units, what to do. */
    default String inWords(ShownUnits units) {
        return RefusalWords.of(this, units);
    }

    /** There is no supply. */
    record EmptyBank() implements PlanRefused {
        @Override
        public String code() {
            return "empty-bank";
        }
    }

    /** More supplies or bottles than can be planned. */
    record TooMany(String what, int measured, int limit) implements PlanRefused {
        @Override
        public String code() {
            return "too-many";
        }
    }

    /** A supply or bottle has no name. */
    record NameMissing(String what, int place) implements PlanRefused {
        @Override
        public String code() {
            return "name-missing";
        }
    }

    /** Two supplies or two bottles have one name. */
    record DuplicateName(String what, String name) implements PlanRefused {
        @Override
        public String code() {
            return "duplicate-name";
        }
    }

    /** A supply is named that the bank does not have, or that is named twice. */
    record SupplyUnknown(String name) implements PlanRefused {
        @Override
        public String code() {
            return "supply-unknown";
        }
    }

    /** A water volume or the hose volume is outside what can be meant. */
    record VolumeOutOfRange(String what, Volume measured, Volume lowest, Volume highest) implements PlanRefused {
        @Override
        public String code() {
            return "volume-out-of-range";
        }
    }

    /** A gauge pressure is below zero or above what can be meant or computed. */
    record PressureOutOfRange(String what, GaugePressure measured, GaugePressure lowest, GaugePressure highest)
            implements PlanRefused {
        @Override
        public String code() {
            return "pressure-out-of-range";
        }
    }

    /** The pressure of the surroundings is outside what can be meant. */
    record AmbientOutOfRange(AbsolutePressure measured, AbsolutePressure lowest, AbsolutePressure highest)
            implements PlanRefused {
        @Override
        public String code() {
            return "ambient-out-of-range";
        }
    }

    /** The bench or the reference temperature is outside the range of the gas's equation of state. */
    record TemperatureOutOfRange(String what, Temperature measured, Temperature lowest, Temperature highest)
            implements PlanRefused {
        @Override
        public String code() {
            return "temperature-out-of-range";
        }
    }

    /** The least reading a bottle may leave with is above its stop. */
    record FloorAboveStop(String bottle, GaugePressure measured, GaugePressure stop) implements PlanRefused {
        @Override
        public String code() {
            return "floor-above-stop";
        }
    }

    /** The marked service pressure is not known. */
    record ServicePressureMissing(String bottle) implements PlanRefused {
        @Override
        public String code() {
            return "service-pressure-missing";
        }
    }

    /** The bottle holds more than its marking allows at this temperature. */
    record BottleAboveLimit(String bottle, GaugePressure measured, GaugePressure limit, GaugePressure servicePressure)
            implements PlanRefused {
        @Override
        public String code() {
            return "bottle-above-limit";
        }
    }

    /** The equation of state gave no answer although its inputs are in range. */
    record NoAnswer(String reason) implements PlanRefused {
        @Override
        public String code() {
            return "no-answer";
        }
    }
}
