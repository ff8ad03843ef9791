package org.lowfirst.planning.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The most fills one delivered supply can make.
 *
 * <p>Gas flows downhill only: what lifts a bottle above a level must come from gas above that level. With D(L) the gas that a mean
 * fill puts above level L into a bottle, no bank however large can do with fewer supplies per fill than
 *
 * <pre>  max over L of D(L) / (V (rho_full - L)),   D(L) = mean of V_b (stop - max(start, L))  </pre>
 *
 * <p>For one kind of bottle that comes with one reading this is all gas above that reading. A booster lifts gas from its inlet
 * level upwards; then L is that level, if it is below the bottles.
 *
 * <p>Symbols: V, V_b volumes of supply and bottle [m3]; L, rho_full, start, stop molar densities [mol/m3].
 */
final class EndlessBank {

    private static final int STARTS = 16;
    private static final int LEVELS = 100;
    private static final int CHANCES = 7;

    private final Numbers numbers;
    private final StudyRequest request;
    private final double[] bandWeight;

    EndlessBank(Numbers numbers, StudyRequest request) {
        this.numbers = numbers;
        this.request = request;
        bandWeight = bandWeights();
    }

    /** Empty when not one of the bottles looked at can be finished. */
    OptionalDouble fillsPerSupply(Way way) {
        List<Lift> lifts = liftsOf(way);
        return lifts.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(fillsPerSupply(way, lifts));
    }

    private double fillsPerSupply(Way way, List<Lift> lifts) {
        double lowest = lifts.stream().mapToDouble(Lift::start_molPerM3).min().orElseThrow();
        double highest = lifts.stream().mapToDouble(Lift::start_molPerM3).max().orElseThrow();
        double full = 0.5 * (way.delivered_molPerM3(0.0) + way.delivered_molPerM3(1.0));
        if (way.alternative().booster() != null) {
            for (int band = 0; band < bandWeight.length; band++) {
                lowest = Math.min(lowest, way.inlet_molPerM3(band));
            }
            return way.supply_m3() * (full - lowest) / lifted_mol(lifts, lowest);
        }
        double most = 0.0;
        for (int i = 0; i <= LEVELS; i++) {
            double level = lowest + (highest - lowest) * i / LEVELS;
            if (level < full) {
                most = Math.max(most, lifted_mol(lifts, level) / (way.supply_m3() * (full - level)));
            }
        }
        return 1.0 / most;
    }

    /** D(level). */
    private static double lifted_mol(List<Lift> lifts, double level) {
        double lifted = 0.0;
        double weight = 0.0;
        for (Lift lift : lifts) {
            weight += lift.weight();
            lifted += lift.weight() * lift.above_mol(level);
        }
        return lifted / weight;
    }

    /** The fills that are needed and that a bank of full supplies can make. */
    private List<Lift> liftsOf(Way way) {
        List<Lift> lifts = new ArrayList<>();
        for (int kind = 0; kind < numbers.kinds().count(); kind++) {
            double bottle_m3 = numbers.kinds().volume_m3(kind);
            for (int band = 0; band < bandWeight.length; band++) {
                double weight = bandWeight[band] * numbers.kinds().share(kind);
                double stop = numbers.kinds().stop_molPerM3(kind, band);
                for (int i = 0; weight > 0.0 && i < STARTS; i++) {
                    double start = numbers.bands()
                            .density_molPerM3(band, numbers.kinds().start_Pa(kind, (i + 0.5) / STARTS));
                    if (start < stop && way.freshFinishes(band, bottle_m3, start, stop)) {
                        lifts.add(new Lift(weight, bottle_m3, start, stop));
                    }
                }
            }
        }
        return lifts;
    }

    private record Lift(double weight, double bottle_m3, double start_molPerM3, double stop_molPerM3) {
        double above_mol(double level_molPerM3) {
            return bottle_m3 * Math.max(0.0, stop_molPerM3 - Math.max(start_molPerM3, level_molPerM3));
        }
    }

    /** How often a bottle comes at the temperatures of each band. */
    private double[] bandWeights() {
        double[] weights = new double[numbers.bands().count()];
        BenchTemperature bench = request.site().temperature();
        for (int day = 0; day < Calendar.DAYS; day++) {
            double wave = bench.swing_K() * Math.cos(2.0 * Math.PI * (day + 1 - bench.warmestDay()) / Calendar.DAYS);
            for (int i = 0; i < CHANCES; i++) {
                double T_K = bench.mean().kelvin() + wave + bench.dailySpread_K() * middle(i);
                weights[numbers.bands().of(T_K)] += numbers.calendar().weightOf(day) / CHANCES;
            }
        }
        return weights;
    }

    /** Middles of {@link #CHANCES} equally likely parts of the standard normal distribution. */
    private static double middle(int part) {
        return new NormalDistribution().inverseCumulativeProbability((part + 0.5) / CHANCES);
    }
}
