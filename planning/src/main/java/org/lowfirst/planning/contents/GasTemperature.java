package org.lowfirst.planning.contents;

import org.lowfirst.gas.Temperature;

/**
 * Temperature of the gas in a cylinder, and how well it is known.
 *
 * @param value best estimate
 * @param standardDeviation_K of that estimate [K], at least 0
 * @param known where it comes from
 */
public record GasTemperature(Temperature value, double standardDeviation_K, Known known) {

    /** Where a temperature comes from. */
    public enum Known {
        /** A thermometer beside a settled cylinder. */
        MEASURED,
        /** Taken over from an earlier reading or from elsewhere. */
        ASSUMED,
        /** Warm gas, temperature from a heat model. */
        WARM_MODELLED,
        /** Warm gas, temperature from a rule of thumb. */
        WARM_UNKNOWN,
        /** A supply just drawn from. */
        DRAWN
    }

    public GasTemperature {
        if (!(standardDeviation_K >= 0.0) || Double.isInfinite(standardDeviation_K)) {
            throw new IllegalArgumentException(
                    "The standard deviation (" + standardDeviation_K + " K) must be finite and at least 0.");
        }
    }

    /** Read beside a settled cylinder. */
    public static GasTemperature measured(Temperature value, ContentsAssumptions assumptions) {
        return new GasTemperature(value, assumptions.temperatures().measured_K(), Known.MEASURED);
    }

    /** Not read now: the last one known, a forecast, a guess. */
    public static GasTemperature assumed(Temperature value, ContentsAssumptions assumptions) {
        return new GasTemperature(value, assumptions.temperatures().assumed_K(), Known.ASSUMED);
    }

    /** Warm gas whose own temperature a heat model gave. */
    public static GasTemperature warmModelled(Temperature gas, ContentsAssumptions assumptions) {
        return new GasTemperature(gas, assumptions.temperatures().warmModelled_K(), Known.WARM_MODELLED);
    }

    /** Warm gas soon after a fill at a bench of this temperature, nothing else known. */
    public static GasTemperature warmUnknown(Temperature bench, ContentsAssumptions assumptions) {
        TemperatureAssumptions t = assumptions.temperatures();
        return new GasTemperature(
                new Temperature(bench.kelvin() + t.warmRise_K()), t.warmUnknown_K(), Known.WARM_UNKNOWN);
    }

    /** Gas in a supply just drawn from at a bench of this temperature. */
    public static GasTemperature drawn(Temperature bench, ContentsAssumptions assumptions) {
        TemperatureAssumptions t = assumptions.temperatures();
        return new GasTemperature(new Temperature(bench.kelvin() - t.drawnDrop_K()), t.drawn_K(), Known.DRAWN);
    }

    /** Whether the gas is at the temperature of its surroundings. */
    public boolean settled() {
        return known == Known.MEASURED || known == Known.ASSUMED;
    }
}
