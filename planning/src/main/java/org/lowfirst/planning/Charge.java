package org.lowfirst.planning;

/**
 * A bottle as the kernel sees it.
 *
 * @param volume_m3 water volume [m3]
 * @param start_mol gas inside before the fill [mol]
 * @param stop_molPerM3 density at which the valve is shut [mol/m3]
 */
record Charge(double volume_m3, double start_mol, double stop_molPerM3) {

    static Charge of(BottleToFill bottle, StopReading stop, Settled settled) {
        double volume_m3 = bottle.waterVolume().cubicMetres();
        return new Charge(
                volume_m3,
                settled.density_molPerM3(bottle.reading()) * volume_m3,
                settled.density_molPerM3(stop.reading()));
    }

    /** Whether the bottle is at its stop before any valve is opened. */
    boolean needsNothing() {
        return start_mol >= volume_m3 * stop_molPerM3;
    }
}
