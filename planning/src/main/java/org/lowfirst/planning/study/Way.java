package org.lowfirst.planning.study;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.planning.study.kernel.BankLevels;

/** An alternative as numbers. Immutable. */
final class Way {

    private final Alternative alternative;
    private final double supply_m3;
    private final double deliveredLowest_molPerM3;
    private final double deliveredRange_molPerM3;
    private final double hose_m3;
    private final double[] purged_molPerM3;
    private final double[] residual_molPerM3;
    private final double[] inlet_molPerM3;
    /** By kind and band: whether a bank full as delivered finishes the emptiest bottle of the kind. */
    private final boolean[][] freshFinishes;

    Way(StudyRequest request, Alternative alternative, Bands bands, Kinds kinds) {
        Site site = request.site();
        this.alternative = alternative;
        Isotherm reference = site.gas().isotherm(site.reference()).orElseThrow();
        double ambient_Pa = site.ambient().pascals();
        SupplyKind supply = alternative.supply();
        supply_m3 = supply.waterVolume().cubicMetres();
        deliveredLowest_molPerM3 =
                reference.density_molPerM3(supply.deliveredLowest().pascals() + ambient_Pa);
        deliveredRange_molPerM3 =
                reference.density_molPerM3(supply.deliveredHighest().pascals() + ambient_Pa) - deliveredLowest_molPerM3;
        hose_m3 = site.hose().cubicMetres();
        Booster booster = alternative.booster();
        purged_molPerM3 = inEveryBand(bands, GaugePressure.ZERO, 0.0);
        residual_molPerM3 = inEveryBand(bands, alternative.habit().residual(), 0.0);
        inlet_molPerM3 = inEveryBand(bands, booster == null ? null : booster.minimumInlet(), BankLevels.NO_BOOSTER);
        freshFinishes = new boolean[kinds.count()][bands.count()];
        for (int kind = 0; kind < kinds.count(); kind++) {
            for (int band = 0; band < bands.count(); band++) {
                freshFinishes[kind][band] = freshFinishes(
                        band,
                        kinds.volume_m3(kind),
                        bands.density_molPerM3(band, kinds.start_Pa(kind, 0.0)),
                        kinds.stop_molPerM3(kind, band));
            }
        }
    }

    private static double[] inEveryBand(Bands bands, @Nullable GaugePressure reading, double none) {
        double[] densities = new double[bands.count()];
        for (int band = 0; band < densities.length; band++) {
            densities[band] = reading == null ? none : bands.density_molPerM3(band, reading.pascals());
        }
        return densities;
    }

    Alternative alternative() {
        return alternative;
    }

    double supply_m3() {
        return supply_m3;
    }

    /** Density in a delivered supply, from the least at 0 to the most at 1 [mol/m3]. */
    double delivered_molPerM3(double uniform) {
        return deliveredLowest_molPerM3 + deliveredRange_molPerM3 * uniform;
    }

    double residual_molPerM3(int band) {
        return residual_molPerM3[band];
    }

    double inlet_molPerM3(int band) {
        return inlet_molPerM3[band];
    }

    boolean freshFinishes(int kind, int band) {
        return freshFinishes[kind][band];
    }

    /** An empty row for the bank. The gas in a purged hose is taken at the mean of the year. */
    BankLevels newBank() {
        return new BankLevels(alternative.bankSize(), hose_m3, purged_molPerM3[purged_molPerM3.length / 2]);
    }

    /** Whether a bank of supplies at their least as delivered finishes a bottle. */
    boolean freshFinishes(int band, double bottle_m3, double start_molPerM3, double stop_molPerM3) {
        BankLevels fresh = newBank();
        for (int place = 0; place < fresh.size(); place++) {
            fresh.put(place, supply_m3, deliveredLowest_molPerM3);
        }
        return start_molPerM3 >= stop_molPerM3
                || fresh.reaches(bottle_m3, start_molPerM3, stop_molPerM3, inlet_molPerM3[band]);
    }
}
