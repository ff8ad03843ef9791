package org.lowfirst.gas;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is written on or said of a cylinder when its water volume is not: so much free gas at such a pressure.
 *
 * @param freeGas volume of its contents at a reference condition, above 0
 * @param filledTo settled pressure at the temperature of that condition
 */
public record Nameplate(Volume freeGas, Pressure filledTo) {

    private static final Pattern AT = Pattern.compile("\\s+at\\s+|\\s*@\\s*", Pattern.CASE_INSENSITIVE);

    public Nameplate {
        if (!(freeGas.cubicMetres() > 0.0)) {
            throw new IllegalArgumentException("The contents (" + freeGas.toLitres() + " L) must be above zero.");
        }
    }

    /** Reads "244 cu ft at 2,200 psi" or "6,900 L @ 2200 psi". */
    public static Parsed<Nameplate> parse(String text) {
        Matcher at = AT.matcher(text);
        if (!at.find()) {
            return new Parsed.Unreadable<>(
                    "The contents need a volume and a pressure, e.g. 244 cu ft at 2,200 psi.", text.length(), text);
        }
        Parsed<Volume> volume = Quantities.volume(text.substring(0, at.start()));
        if (volume instanceof Parsed.Unreadable<Volume> unreadable) {
            return new Parsed.Unreadable<>(unreadable.problem(), unreadable.position(), text);
        }
        Parsed<Pressure> pressure = Quantities.pressure(text.substring(at.end()));
        if (pressure instanceof Parsed.Unreadable<Pressure> unreadable) {
            return new Parsed.Unreadable<>(unreadable.problem(), at.end() + unreadable.position(), text);
        }
        Parsed.Read<Volume> contents = (Parsed.Read<Volume>) volume;
        if (!(contents.value().cubicMetres() > 0.0)) {
            return new Parsed.Unreadable<>("The contents must be above zero, e.g. 244 cu ft at 2,200 psi.", 0, text);
        }
        return new Parsed.Read<>(
                new Nameplate(contents.value(), pressure.orElseThrow()), contents.number(), contents.unit(), text);
    }

    /**
     * The water volume that holds these contents, real gas.
     *
     * @param at the condition the contents are stated at; its temperature is that of the pressure too
     * @param ambient pressure of the surroundings of the gauge
     */
    public Evaluated<Volume> waterVolume(EquationOfState gas, ReferenceCondition at, AbsolutePressure ambient) {
        return gas.density(at.pressure(), at.temperature())
                .then(free -> gas.density(filledTo.toAbsolute(ambient), at.temperature())
                        .then(filled -> filled.molesPerCubicMetre() > 0.0
                                ? new Evaluated.Value<>(new Volume(freeGas.cubicMetres()
                                        * free.molesPerCubicMetre()
                                        / filled.molesPerCubicMetre()))
                                : new Evaluated.OutOfRange<>(
                                        "pressure",
                                        0.0,
                                        Double.MIN_VALUE,
                                        gas.range().highestPressure().pascals(),
                                        "Pa absolute")));
    }
}
