package org.lowfirst.gas;

/**
 * A pressure as somebody stated it: what a gauge shows, or an absolute value. The two never mix without the pressure of
 * the surroundings.
 */
public sealed interface Pressure permits GaugePressure, AbsolutePressure {

    /**
     * @param ambient pressure of the surroundings
     * @return what a gauge in these surroundings would show
     */
    GaugePressure toGauge(AbsolutePressure ambient);

    /**
     * @param ambient pressure of the surroundings
     * @return the absolute pressure
     */
    AbsolutePressure toAbsolute(AbsolutePressure ambient);
}
