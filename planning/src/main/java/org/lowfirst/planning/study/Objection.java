package org.lowfirst.planning.study;

import java.util.Locale;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.ShownUnits;

/** What is wrong with a request: the measured value, the limit and what to do. Nothing was computed. */
public sealed interface Objection {

    /** Stable name of the rule, lower case with hyphens. */
    String code();

    /** One or two sentences for people. */
    String inWords(ShownUnits units);

    /** A number is outside what can be meant. */
    record NumberOutOfRange(String what, double measured, double lowest, double highest, String unit)
            implements Objection {
        @Override
        public String code() {
            return "number-out-of-range";
        }

        @Override
        public String inWords(ShownUnits units) {
            String behind = unit.isEmpty() ? "" : " " + unit;
            return range(what, plain(measured) + behind, plain(lowest), plain(highest) + behind);
        }
    }

    /** A pressure is outside what can be meant or computed. */
    record PressureOutOfRange(String what, GaugePressure measured, GaugePressure lowest, GaugePressure highest)
            implements Objection {
        @Override
        public String code() {
            return "pressure-out-of-range";
        }

        @Override
        public String inWords(ShownUnits units) {
            return range(what, units.show(measured), units.show(lowest), units.show(highest));
        }
    }

    /** A temperature is outside the range of the equation of state. */
    record TemperatureOutOfRange(String what, Temperature measured, Temperature lowest, Temperature highest)
            implements Objection {
        @Override
        public String code() {
            return "temperature-out-of-range";
        }

        @Override
        public String inWords(ShownUnits units) {
            return range(what, units.show(measured), units.show(lowest), units.show(highest));
        }
    }

    /** A volume is outside what can be meant. */
    record VolumeOutOfRange(String what, Volume measured, Volume lowest, Volume highest) implements Objection {
        @Override
        public String code() {
            return "volume-out-of-range";
        }

        @Override
        public String inWords(ShownUnits units) {
            return range(what, units.show(measured), units.show(lowest), units.show(highest));
        }
    }

    /** Two of a list have one name, or one has none. */
    record NameNotItsOwn(String what, String name) implements Objection {
        @Override
        public String code() {
            return "name-not-its-own";
        }

        @Override
        public String inWords(ShownUnits units) {
            return name.isBlank()
                    ? "One %s has no name. Please give each its own name.".formatted(what)
                    : "The name \"%s\" is given to more than one %s. Please give each its own name."
                            .formatted(name, what);
        }
    }

    /** Something is needed that was not given, or the other way round. */
    record Unfitting(String what, String rule) implements Objection {
        @Override
        public String code() {
            return "unfitting";
        }

        @Override
        public String inWords(ShownUnits units) {
            return "The %s must %s. Please correct it.".formatted(what, rule);
        }
    }

    /** One fill could not be planned under these conditions. */
    record ConditionsRefused(PlanRefused why) implements Objection {
        @Override
        public String code() {
            return why.code();
        }

        @Override
        public String inWords(ShownUnits units) {
            return why.inWords(units);
        }
    }

    private static String range(String what, String measured, String lowest, String highest) {
        return "The %s (%s) must be %s to %s. Please check the number and its unit."
                .formatted(what, measured, lowest, highest);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%,.0f", value)
                : Double.toString(value);
    }
}
