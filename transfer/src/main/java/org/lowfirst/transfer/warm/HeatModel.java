package org.lowfirst.transfer.warm;

/**
 * How heat passes between gas, wall and air. Immutable.
 *
 * <p>Symbols: Nu Nusselt, Re Reynolds, Ra Rayleigh number; h heat transfer coefficient [W/(m2 K)]; equations and sources in
 * docs/warm.md and heat-transfer.txt.
 */
public final class HeatModel {

    private final Datasheet sheet;
    private final double insideScale;
    private final double outsideScale;
    private final Inside inside;
    private final Outside outside;

    private HeatModel(Datasheet sheet, double insideScale, double outsideScale) {
        this.sheet = sheet;
        this.insideScale = insideScale;
        this.outsideScale = outsideScale;
        inside = new Inside(sheet, insideScale);
        outside = new Outside(sheet, outsideScale);
    }

    /** The published correlations, as in heat-transfer.txt. */
    public static HeatModel published() {
        return new HeatModel(Datasheet.beside(HeatModel.class, "heat-transfer.txt"), 1.0, 1.0);
    }

    /** This model with every coefficient between gas and wall times a factor, at least 0. */
    public HeatModel timesInside(double factor) {
        return new HeatModel(sheet, notNegative(factor) * insideScale, outsideScale);
    }

    /** This model with every coefficient between wall and air times a factor; 0 keeps all heat in. */
    public HeatModel timesOutside(double factor) {
        return new HeatModel(sheet, insideScale, notNegative(factor) * outsideScale);
    }

    /** This model with one figure of heat-transfer.txt times a factor: to see how much a result depends on it. */
    public HeatModel times(String figure, double factor) {
        return new HeatModel(sheet.times(figure, notNegative(factor)), insideScale, outsideScale);
    }

    private static double notNegative(double factor) {
        if (!(factor >= 0.0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("The factor (" + factor + ") must be at least 0.");
        }
        return factor;
    }

    Inside inside() {
        return inside;
    }

    Outside outside() {
        return outside;
    }

    /** Between gas and wall. */
    static final class Inside {
        private final double scale;
        private final double forcedFactor;
        private final double naturalFactor;
        private final double naturalExponent;
        private final double jet_m;
        private final double gravity_mPerS2;
        final double forcedExponent;

        Inside(Datasheet sheet, double scale) {
            this.scale = scale;
            forcedFactor = sheet.value("inside.forced-factor", "1");
            forcedExponent = sheet.value("inside.forced-exponent", "1");
            naturalFactor = sheet.value("inside.natural-factor", "1");
            naturalExponent = sheet.value("inside.natural-exponent", "1");
            jet_m = sheet.value("inside.jet-diameter", "m");
            gravity_mPerS2 = sheet.value("gravity", "m/s2");
        }

        /** h of the gas stirred by buoyancy alone [W/(m2 K)]; {@code group} is rho^2 beta cp / mu in SI, per kilogram. */
        double natural_WPerM2K(double difference_K, double diameter_m, double k_WPerMK, double group) {
            double ra =
                    gravity_mPerS2 * Math.abs(difference_K) * diameter_m * diameter_m * diameter_m * group / k_WPerMK;
            return scale * naturalFactor * Math.pow(ra, naturalExponent) * k_WPerMK / diameter_m;
        }

        /** What the jet of 1 kg/s would add [W/(m2 K)]; at another flow times flow to {@link #forcedExponent}. */
        double forcedAtUnitFlow_WPerM2K(double diameter_m, double k_WPerMK, double mu_PaS) {
            double re = 4.0 / (Math.PI * jet_m * mu_PaS);
            return scale * forcedFactor * Math.pow(re, forcedExponent) * k_WPerMK / diameter_m;
        }
    }

    /** Between wall and air. */
    static final class Outside {
        private static final double REFERENCE_K = 293.15;

        private final double scale;
        private final double laminarFactor;
        private final double laminarExponent;
        private final double turbulentFactor;
        private final double turbulentExponent;
        private final double k_WPerMK;
        private final double kExponent;
        private final double nu_m2PerS;
        private final double nuExponent;
        private final double prandtl;
        private final double gravity_mPerS2;
        private final double sigma_WPerM2K4;

        Outside(Datasheet sheet, double scale) {
            this.scale = scale;
            laminarFactor = sheet.value("outside.laminar-factor", "1");
            laminarExponent = sheet.value("outside.laminar-exponent", "1");
            turbulentFactor = sheet.value("outside.turbulent-factor", "1");
            turbulentExponent = sheet.value("outside.turbulent-exponent", "1");
            k_WPerMK = sheet.value("air.conductivity", "W/(m K)");
            kExponent = sheet.value("air.conductivity-exponent", "1");
            nu_m2PerS = sheet.value("air.kinematic-viscosity", "m2/s");
            nuExponent = sheet.value("air.kinematic-viscosity-exponent", "1");
            prandtl = sheet.value("air.prandtl", "1");
            gravity_mPerS2 = sheet.value("gravity", "m/s2");
            sigma_WPerM2K4 = sheet.value("stefan-boltzmann", "W/(m2 K4)");
        }

        /** h of convection and radiation together [W/(m2 K)]. */
        double coefficient_WPerM2K(double wall_K, double air_K, double height_m, double emissivity) {
            if (scale == 0.0) {
                return 0.0;
            }
            double film_K = 0.5 * (wall_K + air_K);
            double warmth = Math.log(film_K / REFERENCE_K);
            double k = k_WPerMK * Math.exp(kExponent * warmth);
            double nu = nu_m2PerS * Math.exp(nuExponent * warmth);
            double ra = gravity_mPerS2
                    * Math.abs(wall_K - air_K)
                    / film_K
                    * height_m
                    * height_m
                    * height_m
                    * prandtl
                    / (nu * nu);
            double nusselt = Math.max(
                    laminarFactor * Math.pow(ra, laminarExponent), turbulentFactor * Math.pow(ra, turbulentExponent));
            double radiation = emissivity * sigma_WPerM2K4 * (wall_K * wall_K + air_K * air_K) * (wall_K + air_K);
            return scale * (nusselt * k / height_m + radiation);
        }
    }
}
