package org.lowfirst.gas;

/** Viscosity and thermal conductivity of one pure gas. Implementations are immutable and thread-safe. */
public interface Transport {

    /** Viscosity and conductivity in SI units. */
    record Values(double viscosity_PaS, double conductivity_WPerMK) {}

    /**
     * Viscosity [Pa s] where the point is; a numeric kernel without allocation.
     *
     * @param point a point of the equation of state that belongs to this gas
     */
    double viscosity_PaS(StatePoint point);

    /**
     * Thermal conductivity [W/(m K)] where the point is; a numeric kernel without allocation.
     *
     * @param point a point of the equation of state that belongs to this gas
     */
    double conductivity_WPerMK(StatePoint point);

    /** Both at an absolute pressure and a temperature. */
    Evaluated<Values> values(AbsolutePressure pressure, Temperature temperature);
}
