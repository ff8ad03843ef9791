package org.lowfirst.gas;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A kind of quantity people type, with every spelling of its units that is understood.
 *
 * @param name with its article, e.g. "a pressure"
 * @param offer the units to offer, e.g. "F, C or K"
 * @param example what a right one looks like
 * @param signed whether a number below zero may be meant
 * @param symbols symbol of the unit by its spelling, spellings without spaces, points and brackets and in lower case
 */
public record QuantityKind(String name, String offer, String example, boolean signed, Map<String, String> symbols) {

    static final QuantityKind PRESSURE = of(
            "a pressure",
            "psi, bar, kPa or MPa",
            "150 bar",
            "psi: psi psig psigauge lb/in2 lbf/in2",
            "psia: psia psiabs psiabsolute",
            "bar: bar bars barg bargauge",
            "bara: bara barabs barabsolute",
            "kPa: kpa kpag kpagauge",
            "kPaa: kpaa kpaabs kpaabsolute",
            "MPa: mpa mpag mpagauge",
            "MPaa: mpaa mpaabs mpaabsolute");

    static final QuantityKind TEMPERATURE = of(
            "a temperature",
            "F, C or K",
            "70 F or 21 C",
            "F: f degf fahrenheit degreesfahrenheit",
            "C: c degc celsius degreescelsius",
            "K: k kelvin");

    static final QuantityKind VOLUME = of(
            "a volume",
            "L, cu ft, cu in or m3",
            "2.9 L",
            "L: l litre litres liter liters ltr",
            "cu ft: cuft ft3 cf cubicfoot cubicfeet",
            "cu in: cuin in3 cubicinch cubicinches",
            "m3: m3 cum cubicmetre cubicmetres cubicmeter cubicmeters");

    static final QuantityKind MASS =
            of("a mass", "kg or lb", "2.3 kg", "kg: kg kilogram kilograms", "lb: lb lbs pound pounds");

    private static final List<QuantityKind> ALL = List.of(PRESSURE, TEMPERATURE, VOLUME, MASS);

    public QuantityKind {
        symbols = Map.copyOf(symbols);
    }

    /**
     * A kind that is not below zero.
     *
     * @param lines one for each unit: its symbol, a colon, a space, and its spellings with a space between
     */
    public static QuantityKind of(String name, String offer, String example, String... lines) {
        Map<String, String> symbols = new HashMap<>();
        for (String line : lines) {
            int colon = line.indexOf(':');
            for (String spelling : line.substring(colon + 2).split(" ")) {
                symbols.put(spelling, line.substring(0, colon));
            }
        }
        return new QuantityKind(name, offer, example, false, symbols);
    }

    /** The same kind, and below zero as well. */
    public QuantityKind withSign() {
        return new QuantityKind(name, offer, example, true, symbols);
    }

    /** The symbol of the unit that a typed word means in this kind. */
    Optional<String> findSymbol(String typedUnit) {
        String spelling = typedUnit
                .toLowerCase(Locale.ROOT)
                .replaceAll("[\\s().\u00b0\u00ba" + TypedNumber.SPACES + "]", "")
                .replace('\u00b2', '2')
                .replace('\u00b3', '3');
        return Optional.ofNullable(symbols.get(spelling));
    }

    /** The kind that knows a typed unit. */
    static Optional<QuantityKind> findByUnit(String typedUnit) {
        return ALL.stream()
                .filter(kind -> kind.findSymbol(typedUnit).isPresent())
                .findFirst();
    }
}
