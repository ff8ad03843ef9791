package org.lowfirst.planning.contents;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.BenchFact.StageMade;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;

/**
 * A bench with hidden truth that writes the journal a person would: true volumes, contents, weather, gauge errors, gas that is
 * warm in the bottle and cold in the supply after each stage. Stages move gas isothermally, real gas.
 */
final class SimulatedBench {

    private static final double SCATTER_SHARE = Given.ASSUMED.gauges().repeatShare();

    /** Hidden truth of one cylinder. */
    static final class Truth {
        final MeteredCylinder stated;
        final Gauge gauge;
        final double V_m3;
        final double offset_bar;
        double amount_mol;
        double leakPerDay;

        Truth(MeteredCylinder stated, Gauge gauge, double V_m3, double offset_bar) {
            this.stated = stated;
            this.gauge = gauge;
            this.V_m3 = V_m3;
            this.offset_bar = offset_bar;
        }

        String name() {
            return stated.name();
        }
    }

    final List<Truth> supplies = new ArrayList<>();
    final List<Truth> bottles = new ArrayList<>();
    final List<BenchFact> facts = new ArrayList<>();
    final Map<String, Gauge> gauges = new LinkedHashMap<>();
    private final Random chance;
    private double weather_K;
    private double day;

    SimulatedBench(long seed) {
        chance = new Random(seed);
    }

    Truth supply(String name, double litres, double bar) {
        Truth truth = truth(name, litres, 1.0, bar);
        supplies.add(truth);
        return truth;
    }

    /**
     * @param trueShare true volume / stated volume
     */
    Truth bottle(String name, double litres, double trueShare) {
        Truth truth = truth(name, litres, trueShare, 50.0);
        bottles.add(truth);
        return truth;
    }

    private Truth truth(String name, double litres, double trueShare, double bar) {
        Gauge gauge = Given.gauge("gauge of " + name);
        gauges.put(gauge.name(), gauge);
        MeteredCylinder stated = new MeteredCylinder(name, Volume.ofLitres(litres), VolumeOrigin.STAMPED);
        double error = 1.0 + Given.ASSUMED.volumes().stamped() * chance.nextGaussian();
        double offset_bar = gauge.limit().toBar() * (2.0 * chance.nextDouble() - 1.0);
        Truth truth = new Truth(stated, gauge, litres * 1e-3 * trueShare * error, offset_bar);
        truth.amount_mol = truth.V_m3 * density(bar, 288.15);
        return truth;
    }

    List<MeteredCylinder> cylinders() {
        List<MeteredCylinder> all = new ArrayList<>();
        supplies.forEach(s -> all.add(s.stated));
        bottles.forEach(b -> all.add(b.stated));
        return all;
    }

    double day() {
        return day;
    }

    void pass(double days) {
        day += days;
        for (Truth supply : supplies) {
            supply.amount_mol *= Math.exp(-supply.leakPerDay * days);
        }
        weather_K = 0.8 * weather_K + 3.6 * chance.nextGaussian();
    }

    private double room_K() {
        return 285.15 + weather_K;
    }

    /** Everybody reads every supply, settled. */
    void readBank() {
        supplies.forEach(s -> facts.add(new ReadingTaken(settled(s), Since.KEPT_SHUT)));
    }

    GaugeReading settled(Truth truth) {
        return write(truth, room_K(), Given.ASSUMED.temperatures().measured_K());
    }

    /** A bottle comes in at a pressure nobody recorded and is filled lowest first to a target. */
    void fill(Truth bottle, double found_bar, double target_bar) {
        bottle.amount_mol = bottle.V_m3 * density(found_bar, room_K());
        facts.add(new ReadingTaken(settled(bottle), Since.MAYBE_USED));
        List<Truth> order = new ArrayList<>(supplies);
        order.sort(Comparator.comparingDouble(s -> s.amount_mol / s.V_m3));
        for (Truth supply : order) {
            if (!stage(supply, supply, bottle, target_bar)) {
                continue;
            }
            if (bottle.amount_mol / bottle.V_m3 >= density(target_bar, room_K()) * 0.9999) {
                break;
            }
        }
        pass(0.01);
    }

    /**
     * One stage, until equal or until the bottle, settled, will read the target. Equal means equal pressure now, bottle warm
     * and supply cold. What is recorded names {@code named}, what is opened is {@code opened}.
     */
    boolean stage(Truth named, Truth opened, Truth bottle, double target_bar) {
        double warm_K = room_K() + 5.0 + Math.floorMod(bottle.name().hashCode(), 10);
        double cold_K = room_K() - 3.0 * chance.nextDouble();
        double equal = amountWhenEqual(opened, cold_K, bottle, warm_K) - bottle.amount_mol;
        double wanted = bottle.V_m3 * density(target_bar, room_K()) - bottle.amount_mol;
        double moved = Math.min(equal, wanted);
        if (moved <= 0.2) {
            return false;
        }
        opened.amount_mol -= moved;
        bottle.amount_mol += moved;
        day += 0.005;
        Temperature room = new Temperature(room_K());
        GaugeReading supplyAfter =
                reading(named, named == opened ? cold_K : room_K(), GasTemperature.drawn(room, Given.ASSUMED));
        GaugeReading bottleAfter = reading(bottle, warm_K, GasTemperature.warmUnknown(room, Given.ASSUMED));
        facts.add(new StageMade(at(), named.name(), bottle.name(), moved == equal, null, supplyAfter, bottleAfter));
        return true;
    }

    /** What the bottle holds when both are at one pressure [mol]. */
    private static double amountWhenEqual(Truth supply, double supply_K, Truth bottle, double bottle_K) {
        double all_mol = supply.amount_mol + bottle.amount_mol;
        double low_bar = 0.0;
        double high_bar = 300.0;
        for (int i = 0; i < 40; i++) {
            double mid_bar = 0.5 * (low_bar + high_bar);
            double there_mol = supply.V_m3 * density(mid_bar, supply_K) + bottle.V_m3 * density(mid_bar, bottle_K);
            if (there_mol < all_mol) {
                low_bar = mid_bar;
            } else {
                high_bar = mid_bar;
            }
        }
        return bottle.V_m3 * density(low_bar, bottle_K);
    }

    private GaugeReading write(Truth truth, double gas_K, double thermometer_K) {
        Temperature read = new Temperature(gas_K + thermometer_K * chance.nextGaussian());
        return reading(truth, gas_K, GasTemperature.measured(read, Given.ASSUMED));
    }

    private GaugeReading reading(Truth truth, double gas_K, GasTemperature said) {
        double scatter_bar = SCATTER_SHARE * truth.gauge.limit().toBar() * chance.nextGaussian();
        double shown_bar = Math.max(0.0, Math.rint(bar(truth, gas_K) + truth.offset_bar + scatter_bar));
        return new GaugeReading(at(), truth.name(), truth.gauge.name(), GaugePressure.ofBar(shown_bar), said);
    }

    private Instant at() {
        return Given.day(day);
    }

    private static double bar(Truth truth, double gas_K) {
        AbsolutePressure p = Given.OXYGEN
                .gas()
                .pressure(new Density(truth.amount_mol / truth.V_m3), new Temperature(gas_K))
                .orElseThrow();
        return p.toGauge(Given.OXYGEN.ambient()).toBar();
    }

    private static double density(double bar, double kelvin) {
        return Given.OXYGEN
                .gas()
                .density(GaugePressure.ofBar(bar).toAbsolute(Given.OXYGEN.ambient()), new Temperature(kelvin))
                .orElseThrow()
                .molesPerCubicMetre();
    }

    BenchHistory reconcile() {
        return new Reconciliation(Given.OXYGEN, Given.ASSUMED).reconcile(cylinders(), gauges.values(), facts);
    }
}
