package org.lowfirst.transfer.warm;

/**
 * Effective area of a valve: the throat of a loss-free nozzle that passes the same flow.
 *
 * <p>A flow coefficient is turned into an area through what defines it, the flow of water at a small pressure difference:
 * {@code m = A sqrt(2 rho dp)} with Kv in m3/h at 1 bar and Cv in US gallons a minute at 1 psi. The choked gas flow that the
 * control valve standard gives for the same coefficient is up to 15 % higher (pressure recovery behind the throat); the opening
 * of a hand valve is never known that well.
 *
 * @param squareMetres effective area [m2], above 0
 * @see "[IEC60534-2-1] definition of the flow coefficient (second hand)"
 */
public record FlowArea(double squareMetres) {

    private static final double SECONDS_PER_HOUR = 3600.0;
    private static final double PASCALS_PER_BAR = 1e5;
    /** Density of the water that defines a flow coefficient [kg/m3]. */
    private static final double WATER_KG_PER_M3 = 1000.0;
    /** Kv = 0.865 Cv, from m3/h at 1 bar and US gallon/min (3.785411784 L) at 1 psi. */
    private static final double KV_PER_CV = 3.785411784e-3 * 60.0 * Math.sqrt(PASCALS_PER_BAR / 6894.757293168361);

    public FlowArea {
        if (!(squareMetres > 0.0) || Double.isInfinite(squareMetres)) {
            throw new IllegalArgumentException("The flow area (" + squareMetres + " m2) must be above 0.");
        }
    }

    /** From the metric flow coefficient [m3/h of water at 1 bar]. */
    public static FlowArea ofKv(double kv_m3PerH) {
        return new FlowArea(kv_m3PerH / SECONDS_PER_HOUR * Math.sqrt(WATER_KG_PER_M3 / (2.0 * PASCALS_PER_BAR)));
    }

    /** From the US flow coefficient [US gallon/min of water at 1 psi]. */
    public static FlowArea ofCv(double cv_usGallonPerMin) {
        return ofKv(KV_PER_CV * cv_usGallonPerMin);
    }

    /** A round bore of this diameter with a discharge coefficient. */
    public static FlowArea ofBore(double diameter_m, double dischargeCoefficient) {
        return new FlowArea(Math.PI / 4.0 * diameter_m * diameter_m * dischargeCoefficient);
    }
}
