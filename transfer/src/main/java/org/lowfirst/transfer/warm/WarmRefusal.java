package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** Why there is no answer about warm gas: the measured value and the limit. Nothing was changed. */
public sealed interface WarmRefusal {

    /** Stable name of the rule, lower case with hyphens. */
    String code();

    /** A temperature is outside the range the gas equation or the tables are used in. */
    record TemperatureOutOfRange(String what, Temperature measured, Temperature lowest, Temperature highest)
            implements WarmRefusal {
        @Override
        public String code() {
            return "temperature-out-of-range";
        }
    }

    /** A gauge pressure is below zero or above what can be computed. */
    record PressureOutOfRange(String what, GaugePressure measured, GaugePressure lowest, GaugePressure highest)
            implements WarmRefusal {
        @Override
        public String code() {
            return "pressure-out-of-range";
        }
    }

    /** A number such as a rate, a volume, a time or a share is outside what can be meant; all three in {@code unit}. */
    record NumberOutOfRange(String what, double measured, double lowest, double highest, String unit)
            implements WarmRefusal {
        @Override
        public String code() {
            return "number-out-of-range";
        }
    }

    /** A pressure is not above the one it must be above. */
    record MustRise(String what, GaugePressure measured, GaugePressure mustBeAbove) implements WarmRefusal {
        @Override
        public String code() {
            return "must-rise";
        }
    }

    /** In a list of readings one is lower than the one before, although the bottle was being filled; places count from 1. */
    record SequenceFalls(int place, GaugePressure measured, GaugePressure before) implements WarmRefusal {
        @Override
        public String code() {
            return "sequence-falls";
        }
    }

    /** In a list of readings one is not later than the one before; places count from 1. */
    record TimeGoesBack(int place, double measured_s, double before_s) implements WarmRefusal {
        @Override
        public String code() {
            return "time-goes-back";
        }
    }

    /** Something must be named and is not. */
    record NameMissing(String what) implements WarmRefusal {
        @Override
        public String code() {
            return "name-missing";
        }
    }

    /** What is wanted cannot be reached within the limits that were set; best and wanted are in {@code unit}. */
    record NotReachable(String what, double best, double wanted, String unit) implements WarmRefusal {
        @Override
        public String code() {
            return "not-reachable";
        }
    }

    /** The computation left the range of the gas equation on its way, or did not converge. */
    record NoAnswer(String reason) implements WarmRefusal {
        @Override
        public String code() {
            return "no-answer";
        }
    }

    /** A property of the gas that could not be had, as a refusal. */
    static WarmRefusal of(Evaluated<?> missing) {
        return new NoAnswer(missing.toString());
    }
}
