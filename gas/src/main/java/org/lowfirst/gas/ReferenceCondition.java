package org.lowfirst.gas;

/**
 * The condition at which an amount of gas is stated as a volume. A litre of gas means nothing without one.
 *
 * @param label how people name it, e.g. "70 F, 1 atm"
 */
public record ReferenceCondition(String label, Temperature temperature, AbsolutePressure pressure) {

    /** US: 70 F and 760 mmHg (14 CFR 25.1439). */
    public static final ReferenceCondition US_70F_1ATM =
            new ReferenceCondition("70 F, 1 atm", Temperature.ofFahrenheit(70), StandardAtmosphere.PRESSURE);

    /** ISO 13443: 15 C and 101.325 kPa. */
    public static final ReferenceCondition ISO_15C_1ATM =
            new ReferenceCondition("15 C, 1.013 bar", Temperature.ofCelsius(15), StandardAtmosphere.PRESSURE);
}
