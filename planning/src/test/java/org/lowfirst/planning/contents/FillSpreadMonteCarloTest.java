package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlansInOrder;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.Step;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.contents.FillSpread.Spread;
import org.lowfirst.planning.contents.FillSpread.StageSpread;
import org.lowfirst.planning.contents.FillUncertainty.Known;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;

/**
 * The stated spread of a plan against benches drawn at random: gauges off by anything within their class, readings scattered,
 * volumes and temperature off, the fill done by the truth and read by those gauges.
 */
class FillSpreadMonteCarloTest {

    private static final int DRAWS = 4000;
    private static final double TEMPERATURE_K = 1.0;
    private static final double SERVICE_BAR = 200;

    private final Gauge manifold = Given.gauge("manifold");
    private final Gauge onBottle =
            Gauge.of("bottle", GaugeScale.of(250, 2, PressureUnit.BAR), new GaugeAccuracy.OfFullScale(2.5));
    private final FillUncertainty known =
            FillUncertainty.oneGauge(List.of("A", "B", "C"), manifold, onBottle, VolumeOrigin.STAMPED, TEMPERATURE_K);
    private final FillSpreads spreads = FillSpreads.under(conditions(293.15), TEMPERATURE_K, Given.ASSUMED);

    private static Conditions conditions(double kelvin) {
        return Conditions.of(Oxygen.schmidtWagner(), new Temperature(kelvin), ReferenceRule.EU);
    }

    private static FillRequest request(double a, double b, double c, double litres, double found, double target) {
        return new FillRequest(
                List.of(supply("A", a, 50), supply("B", b, 50), supply("C", c, 50)),
                bottle(litres, found, target, SERVICE_BAR));
    }

    private static SupplyState supply(String name, double bar, double litres) {
        return new SupplyState(name, Volume.ofLitres(litres), GaugePressure.ofBar(bar));
    }

    private static BottleToFill bottle(double litres, double found, double target, double service) {
        return new BottleToFill(
                "R",
                Volume.ofLitres(litres),
                GaugePressure.ofBar(found),
                GaugePressure.ofBar(target),
                GaugePressure.ofBar(service));
    }

    private static FillPlan plan(FillPlanner planner, FillRequest request) {
        return ((PlansInOrder) planner.planInOrder(request.supplies(), List.of(request.bottle()), null))
                .plans()
                .get(0);
    }

    private FillSpread spreadOf(FillRequest request) {
        return spreads.spread(plan(FillPlanner.under(conditions(293.15)), request), known);
    }

    /** What one drawn bench shows. */
    private final class Drawn {
        final Map<String, Double> bottle = new HashMap<>();
        final Map<String, Double> supply = new HashMap<>();
        final double reach;
        final boolean reaches;

        Drawn(FillRequest said, Random chance) {
            double lasting = manifold.limit().toBar() * (2 * chance.nextDouble() - 1);
            double lastingBottle = onBottle.limit().toBar() * (2 * chance.nextDouble() - 1);
            List<SupplyState> supplies = new ArrayList<>();
            for (SupplyState s : said.supplies()) {
                supplies.add(supply(
                        s.name(),
                        s.reading().toBar() - lasting - scatter(manifold, chance),
                        s.waterVolume().toLitres() * (1 + 0.005 * chance.nextGaussian())));
            }
            double litres = said.bottle().waterVolume().toLitres() * (1 + 0.005 * chance.nextGaussian());
            double found = said.bottle().reading().toBar() - lastingBottle - scatter(onBottle, chance);
            double stop = said.bottle().target().toBar();
            FillPlanner planner = FillPlanner.under(conditions(293.15 + TEMPERATURE_K * chance.nextGaussian()));
            FillPlan done = plan(planner, new FillRequest(supplies, bottle(litres, found, stop - lastingBottle, 399)));
            for (Step step : done.fill().steps()) {
                bottle.put(step.supply(), step.bottle().after().toBar() + lastingBottle + scatter(onBottle, chance));
            }
            done.fill()
                    .bankAfter()
                    .forEach(s -> supply.put(s.name(), s.reading().toBar() + lasting + scatter(manifold, chance)));
            reaches = done.reaches();
            FillPlan open = plan(planner, new FillRequest(supplies, bottle(litres, found, 399, 399)));
            reach = open.fill().finalReading().toBar() + lastingBottle + scatter(onBottle, chance);
        }

        private double scatter(Gauge gauge, Random chance) {
            double rounding = gauge.scale().resolution().toBar() * (chance.nextDouble() - 0.5);
            return 0.2 * gauge.limit().toBar() * chance.nextGaussian() + rounding;
        }
    }

    private List<Drawn> draw(FillRequest request) {
        Random chance = new Random(20260405);
        List<Drawn> all = new ArrayList<>();
        for (int i = 0; i < DRAWS; i++) {
            all.add(new Drawn(request, chance));
        }
        return all;
    }

    private static void covers(Spread stated, List<Double> drawn, double chance, double tolerance) {
        double half = stated.within(chance).toBar();
        long covered = drawn.stream()
                .filter(x -> Math.abs(x - stated.expected().toBar()) <= half)
                .count();
        assertThat(covered / (double) drawn.size()).as("covered of " + chance).isCloseTo(chance, within(tolerance));
    }

    private static void agrees(Spread stated, List<Double> drawn) {
        StreamingStatistics statistics = new StreamingStatistics();
        drawn.forEach(statistics::addValue);
        double deviation = stated.standardDeviation().toBar();
        assertThat(statistics.getMean()).isCloseTo(stated.expected().toBar(), within(0.15 * deviation));
        assertThat(statistics.getStandardDeviation() / deviation).isCloseTo(1.0, within(0.06));
        covers(stated, drawn, 0.50, 0.03);
        covers(stated, drawn, 0.80, 0.02);
        covers(stated, drawn, 0.95, 0.012);
    }

    /** Three supplies 62, 118, 190 bar into 5 L at 40 bar, target 150: two equal stages and a stop. */
    @Test
    void equalStagesAndSuppliesShowWhatTheSpreadSays() {
        FillRequest request = request(62, 118, 190, 5, 40, 150);
        FillSpread spread = spreadOf(request);
        List<Drawn> drawn = draw(request);
        for (StageSpread stage : spread.stages()) {
            agrees(
                    stage.supplyAfter(),
                    drawn.stream().map(d -> d.supply.get(stage.supply())).toList());
        }
        for (StageSpread stage : spread.stages().subList(0, 2)) {
            agrees(
                    stage.bottle(),
                    drawn.stream().map(d -> d.bottle.get(stage.supply())).toList());
        }
        assertThat(spread.stages().get(2).bottle().standardDeviation()).isEqualTo(GaugePressure.ZERO);
        assertThat(spread.chanceReaches()).isGreaterThan(0.999);
    }

    /** A bottle that comes just to its target, or just not: how often is stated. */
    @Test
    void theChanceOfReachingTheStopIsCounted() {
        FillRequest request = request(62, 118, 156, 5, 40, 150);
        FillSpread spread = spreadOf(request);
        List<Drawn> drawn = draw(request);
        agrees(spread.reach(), drawn.stream().map(d -> d.reach).toList());
        double reached = drawn.stream().filter(d -> d.reaches).count() / (double) DRAWS;
        assertThat(spread.chanceReaches()).isBetween(0.3, 0.97).isCloseTo(reached, within(0.03));
    }

    @Test
    void theCountOfFillsSaysHowSureTheLastAndTheNextAre() {
        FillSpread spread = spreadOf(request(62, 118, 190, 5, 40, 150));
        FillSpread.CountedFill last = Objects.requireNonNull(spread.last());
        FillSpread.CountedFill next = Objects.requireNonNull(spread.next());
        assertThat(last.number()).isEqualTo(7);
        assertThat(next.number()).isEqualTo(8);
        assertThat(next.reach().expected().toBar()).isCloseTo(147.1, within(1.0));
        assertThat(last.chanceReaches()).isGreaterThan(0.6);
        assertThat(next.chanceReaches()).isLessThan(0.4);
        assertThat(next.reach().within95().toBar()).isBetween(8.0, 20.0);
    }

    /** A gauge may err by more than an almost empty supply reads; the spread is given all the same. */
    @Test
    void anAlmostEmptySupplyHasASpreadToo() {
        FillSpread spread = spreadOf(request(2, 118, 190, 5, 0, 150));
        assertThat(spread.stages())
                .hasSize(3)
                .allSatisfy(stage ->
                        assertThat(stage.supplyAfter().standardDeviation()).isGreaterThan(GaugePressure.ZERO));
        assertThat(spread.chanceReaches()).isBetween(0.5, 1.0);
    }

    @Test
    void aBottleThatNeedsNothingHasNoStagesToSpread() {
        FillSpread spread = spreadOf(request(62, 118, 190, 5, 150, 150));
        assertThat(spread.stages()).isEmpty();
        assertThat(spread.last()).isNull();
        assertThat(spread.next()).isNull();
    }

    @Test
    void aBetterGaugeNarrowsTheSpread() {
        FillRequest request = request(62, 118, 190, 5, 40, 150);
        Gauge fine = Gauge.of("manifold", GaugeScale.of(250, 1, PressureUnit.BAR), new GaugeAccuracy.OfFullScale(0.6));
        FillUncertainty better =
                FillUncertainty.oneGauge(List.of("A", "B", "C"), fine, fine, VolumeOrigin.STAMPED, TEMPERATURE_K);
        FillPlan plan = plan(FillPlanner.under(conditions(293.15)), request);
        double coarse =
                spreads.spread(plan, known).stages().get(0).bottle().within95().toBar();
        double narrow =
                spreads.spread(plan, better).stages().get(0).bottle().within95().toBar();
        assertThat(narrow).isLessThan(0.4 * coarse);
    }

    @Test
    void learnedOffsetsMoveWhatTheGaugeWillShow() {
        FillRequest request = request(62, 118, 190, 5, 40, 150);
        GaugeOffset learned = new GaugeOffset(GaugePressure.ofBar(4), GaugePressure.ofBar(0.5));
        Map<String, Known> supplies = new HashMap<>(known.supplies());
        supplies.replaceAll((name, k) -> new Known(k.gauge().with(learned), k.volume()));
        FillUncertainty taught = new FillUncertainty(supplies, known.bottle(), TEMPERATURE_K);
        FillPlan plan = plan(FillPlanner.under(conditions(293.15)), request);
        Spread before = spreads.spread(plan, known).stages().get(0).bottle();
        Spread after = spreads.spread(plan, taught).stages().get(0).bottle();
        assertThat(after.expected().toBar()).isLessThan(before.expected().toBar() - 3);
        assertThat(after.within95()).isLessThan(before.within95());
    }
}
