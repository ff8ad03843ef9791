package org.lowfirst.planning;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * The gas as the gauges of one bench show it today, and the checks every plan at that bench begins with. Immutable and
 * thread-safe; making one evaluates the equation of state.
 *
 * <p>Ask {@link #wrongWith} first: the other methods throw when the conditions cannot be computed.
 */
public final class BenchGas {

    private final BenchOutcome bench;

    private BenchGas(BenchOutcome bench) {
        this.bench = bench;
    }

    public static BenchGas under(Conditions conditions) {
        return new BenchGas(BenchOutcome.under(conditions));
    }

    /**
     * The first thing wrong with the conditions, the bank or the bottles; null when they can be planned with.
     *
     * @param fullSupply see {@link FillRequest#fullSupply()}
     */
    public @Nullable PlanRefused wrongWith(
            List<SupplyState> supplies, List<BottleToFill> bottles, @Nullable GaugePressure fullSupply) {
        Bench ready = bench.bench();
        if (ready == null) {
            return bench.why();
        }
        PlanRefused wrong = Check.supplies(supplies, ready.highestReading());
        if (wrong == null) {
            wrong = Check.bottles(bottles);
        }
        if (wrong == null && fullSupply != null) {
            wrong = Check.pressure("reading of a full supply", fullSupply, ready.highestReading());
        }
        for (int i = 0; wrong == null && i < bottles.size(); i++) {
            wrong = wrongWith(bottles.get(i), ready);
        }
        return wrong;
    }

    /** Where the valve is shut for a bottle that has been checked. */
    public StopReading stop(BottleToFill bottle) {
        return ready().stop(bottle.target(), Objects.requireNonNull(bottle.servicePressure(), "checked before"));
    }

    /** Molar density [mol/m3] behind a settled reading. */
    public double density_molPerM3(GaugePressure reading) {
        return ready().now().density_molPerM3(reading);
    }

    /** Settled reading of gas of this molar density [mol/m3]. */
    public GaugePressure reading(double rho_molPerM3) {
        return ready().now().reading(rho_molPerM3);
    }

    /** Hose volume [m3]. */
    public double hose_m3() {
        return ready().hose_m3();
    }

    /** Molar density [mol/m3] of the gas in a purged hose. */
    public double ambientDensity_molPerM3() {
        return ready().ambientDensity_molPerM3();
    }

    /** Why the conditions refuse every plan; null when they can be planned with. */
    @Nullable
    PlanRefused refused() {
        return bench.refused();
    }

    Bench ready() {
        Bench ready = bench.bench();
        if (ready == null) {
            throw new IllegalStateException(
                    "The conditions are refused: " + bench.why() + ".\nMaybe wrongWith() was not asked first?");
        }
        return ready;
    }

    private static @Nullable PlanRefused wrongWith(BottleToFill bottle, Bench ready) {
        PlanRefused wrong = Check.bottle(bottle, ready.highestReading());
        GaugePressure service = bottle.servicePressure();
        if (wrong != null || service == null) {
            return wrong;
        }
        StopReading stop = ready.stop(bottle.target(), service);
        return bottle.reading().compareTo(stop.neverAbove()) > 0
                ? new PlanRefused.BottleAboveLimit(bottle.name(), bottle.reading(), stop.neverAbove(), service)
                : null;
    }
}
