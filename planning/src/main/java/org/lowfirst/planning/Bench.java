package org.lowfirst.planning;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * The conditions at a bench, checked and made ready for many plans.
 *
 * @param now gas settled at the bench's temperature
 * @param marked gas settled at the reference temperature of the service pressures
 * @param hose_m3 hose volume [m3]
 * @param ambientDensity_molPerM3 density of the gas in a purged hose [mol/m3]
 * @param highestReading highest reading that is planned with
 */
record Bench(
        Settled now, Settled marked, double hose_m3, double ambientDensity_molPerM3, GaugePressure highestReading) {

    static Bench of(Settled now, Settled marked, double hose_m3) {
        GaugePressure highest = lower(Limits.HIGHEST_READING, lower(now.highestReading(), marked.highestReading()));
        return new Bench(now, marked, hose_m3, now.ambientDensity_molPerM3(), highest);
    }

    /** Where the valve is shut for this bottle; {@code service} is its marked pressure. */
    StopReading stop(GaugePressure target, GaugePressure service) {
        Temperature bench = now.temperature();
        Temperature reference = marked.temperature();
        boolean cold = bench.compareTo(reference) < 0;
        GaugePressure neverAbove = cold ? now.reading(marked.density_molPerM3(service)) : service;
        if (target.compareTo(neverAbove) <= 0) {
            return new StopReading(target, target, neverAbove, Cap.NONE, bench, reference);
        }
        Cap cap = cold ? Cap.COLD_BENCH : Cap.SERVICE_PRESSURE;
        return new StopReading(neverAbove, target, neverAbove, cap, bench, reference);
    }

    private static GaugePressure lower(GaugePressure a, GaugePressure b) {
        return a.compareTo(b) <= 0 ? a : b;
    }
}
