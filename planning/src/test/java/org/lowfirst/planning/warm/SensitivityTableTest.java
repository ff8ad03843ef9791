package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.transfer.warm.HeatModel;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.Wall;
import org.lowfirst.transfer.warm.WallLayer;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.WarmModel;

/**
 * Halves and doubles what was remembered or assumed, one at a time, and writes the table of docs/warm.md. The table there must be
 * the one that comes out here; a failing test shows the new one.
 */
class SensitivityTableTest {

    private static final String BEGIN = "<!-- sensitivity: written by SensitivityTableTest -->\n";
    private static final String END = "<!-- end -->";

    private record Outcome(double hottest_F, double settled_psi, double percent, double wait_min) {}

    private final List<String> lines = new ArrayList<>(List.of(
            "| what is changed | factor | gas at the stop, F above the bench | settles to, psi | full, % | wait, min |",
            "|---|---|---|---|---|---|"));

    @Test
    void theTableInTheDocumentIsTheOneComputed() throws IOException {
        Outcome base = outcome(heat -> heat, wall -> wall);
        add("nothing", 1.0, base);
        heat("natural convection inside", "inside.natural-factor");
        heat("jet convection inside", "inside.forced-factor");
        heat("bore of the jet", "inside.jet-diameter");
        for (double factor : new double[] {0.5, 2.0}) {
            add("all coefficients inside", factor, outcome(heat -> heat.timesInside(factor), wall -> wall));
        }
        for (double factor : new double[] {0.5, 2.0}) {
            add("all coefficients outside", factor, outcome(heat -> heat.timesOutside(factor), wall -> wall));
        }
        for (double factor : new double[] {0.5, 2.0}) {
            add("heat stored in the wall", factor, outcome(heat -> heat, wall -> capacity(wall, factor)));
        }
        for (double emissivity : new double[] {0.1, 0.9}) {
            add(
                    "emissivity " + emissivity + " for 0.3",
                    emissivity / 0.3,
                    outcome(heat -> heat, wall -> painted(wall, emissivity)));
        }
        String table = String.join("\n", lines) + "\n";
        String document = Files.readString(Path.of("..", "docs", "warm.md"));
        int from = document.indexOf(BEGIN) + BEGIN.length();
        assertThat(document.substring(from, document.indexOf(END, from))).isEqualTo(table);
    }

    /** The conclusion drawn from the table: what is remembered of convection moves the settled reading by less than 1.5 %. */
    @Test
    void rememberedCoefficientsMoveTheSettledReadingByLittle() {
        Outcome base = outcome(heat -> heat, wall -> wall);
        for (double factor : new double[] {0.5, 2.0}) {
            Outcome inside = outcome(heat -> heat.timesInside(factor), wall -> wall);
            assertThat(inside.settled_psi()).isCloseTo(base.settled_psi(), within(0.015 * base.settled_psi()));
            Outcome outside = outcome(heat -> heat.timesOutside(factor), wall -> wall);
            assertThat(outside.settled_psi()).isCloseTo(base.settled_psi(), within(0.015 * base.settled_psi()));
        }
    }

    private void heat(String words, String figure) {
        for (double factor : new double[] {0.5, 2.0}) {
            add(words, factor, outcome(heat -> heat.times(figure, factor), wall -> wall));
        }
    }

    private void add(String words, double factor, Outcome o) {
        lines.add(String.format(
                Locale.ROOT,
                "| %s | %.3g | %.1f | %.0f | %.1f | %.0f |",
                words,
                factor,
                o.hottest_F(),
                o.settled_psi(),
                o.percent(),
                o.wait_min()));
    }

    /** A 2.9 L aluminium bottle of 2.4 kg from 200 to 2,015 psi at 200 psi a minute out of a full 49 L supply at 70 F. */
    private static Outcome outcome(UnaryOperator<HeatModel> heat, UnaryOperator<Wall> wall) {
        WarmModel published = WarmModel.oxygen();
        WarmBench standard = WarmBench.oxygen(Temperature.ofFahrenheit(70), ReferenceRule.US);
        WarmBench bench = new WarmBench(
                published.with(heat.apply(published.heat())),
                standard.temperature(),
                standard.ambient(),
                standard.rule());
        RatedBottle known = RatedBottle.of(
                        "N", Volume.ofLitres(2.9), GaugePressure.ofPsi(2015), WallMaterial.ALUMINIUM, new Mass(2.4))
                .orElseThrow();
        RatedBottle bottle =
                new RatedBottle(known.name(), known.waterVolume(), known.servicePressure(), wall.apply(known.wall()));
        TimedSupply supply = TimedSupply.of("1", Volume.ofLitres(49), GaugePressure.ofPsi(2200), null, null)
                .orElseThrow();
        FillSchedule schedule = FillInTime.plan(new FillInTimeRequest(
                        List.of(supply),
                        bottle,
                        GaugePressure.ofPsi(200),
                        bench,
                        Pace.steady(RiseRate.ofPsiPerMinute(200))))
                .orElseThrow();
        SchedulePoint last = schedule.series().get(schedule.series().size() - 1);
        StopPlan plan = StopAndSettle.plan(new StopRequest(
                        bottle, new GasNow.Stated(last.bottle(), last.bottleGas(), last.bottleWall()), bench))
                .orElseThrow();
        return new Outcome(
                (last.bottleGas().kelvin() - bench.temperature().kelvin()) * 1.8,
                plan.ifShutNow().atBench().toPsi(),
                plan.ifShutNow().percentFull(),
                plan.wait_s().orElseThrow() / 60.0);
    }

    private static Wall capacity(Wall wall, double factor) {
        return new Wall(
                wall.layers().stream()
                        .map(layer -> new WallLayer(
                                new Mass(factor * layer.mass().kilograms()),
                                layer.specificHeat_JPerKgK(),
                                layer.specificHeatSlope_JPerKgK2(),
                                layer.halfResistance_KPerW()))
                        .toList(),
                wall.innerArea_m2(),
                wall.outerArea_m2(),
                wall.innerDiameter_m(),
                wall.height_m(),
                wall.emissivity(),
                wall.origin());
    }

    private static Wall painted(Wall wall, double emissivity) {
        return new Wall(
                wall.layers(),
                wall.innerArea_m2(),
                wall.outerArea_m2(),
                wall.innerDiameter_m(),
                wall.height_m(),
                emissivity,
                wall.origin());
    }
}
