package org.lowfirst.planning.study;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.words.Phrases;

/** What is wrong with a request: the measured value, the limit and what to do. Nothing was computed. */
public sealed interface Objection {

    /** Numbers beyond these are told with an exponent. */
    double LEAST_PLAIN = 1e-6;

    double MOST_PLAIN = 1e15;

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
            return range(
                    units, what, plain(measured) + behind, plain(lowest), plain(highest) + behind, lowest == highest);
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
            return range(units, what, units.show(measured), units.show(lowest), units.show(highest), false);
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
            return range(units, what, units.show(measured), units.show(lowest), units.show(highest), false);
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
            return range(units, what, units.show(measured), units.show(lowest), units.show(highest), false);
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
            Phrases phrases = Phrases.in(units.language());
            return name.isBlank()
                    ? phrases.text("refused.nameless", Map.of("what", phrases.noun(what)))
                    : phrases.text("refused.duplicate-name", Map.of("name", name, "what", phrases.noun(what)));
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
            Phrases phrases = Phrases.in(units.language());
            return phrases.text("refused.unfitting", Map.of("what", phrases.noun(what), "rule", phrases.rule(rule)));
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

    private static String range(
            ShownUnits units, String what, String measured, String lowest, String highest, boolean one) {
        Phrases phrases = Phrases.in(units.language());
        Map<String, String> values =
                Map.of("what", phrases.noun(what), "measured", measured, "lowest", lowest, "highest", highest);
        return phrases.text(one ? "refused.exact" : "refused.out-of-range", values);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%,.0f", value)
                : Math.abs(value) >= LEAST_PLAIN && Math.abs(value) < MOST_PLAIN
                        ? new DecimalFormat("0.#########", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value)
                        : Double.toString(value);
    }
}
