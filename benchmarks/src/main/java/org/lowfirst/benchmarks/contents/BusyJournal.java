package org.lowfirst.benchmarks.contents;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.contents.BenchFact;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.BenchFact.StageMade;
import org.lowfirst.planning.contents.BenchFact.SupplyExchanged;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.GasTemperature;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeAccuracy;
import org.lowfirst.planning.contents.GaugeReading;
import org.lowfirst.planning.contents.GaugeScale;
import org.lowfirst.planning.contents.MeteredCylinder;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;

/** A seeded journal: four supplies read every morning, thirty bottles filled in two stages, an exchange now and then. */
final class BusyJournal {

    private static final int SUPPLIES = 4;
    private static final int BOTTLES = 30;
    private static final double SUPPLY_LITRES = 50.0;
    private static final double BOTTLE_LITRES = 5.0;

    final List<MeteredCylinder> cylinders = new ArrayList<>();
    final List<Gauge> gauges = new ArrayList<>();
    final List<BenchFact> facts = new ArrayList<>();

    private final Random chance = new Random(20260407);
    private final double[] bar = {80, 120, 160, 195};
    private Instant now = Instant.parse("2026-03-02T08:00:00Z");

    BusyJournal(int count) {
        for (int i = 0; i < SUPPLIES; i++) {
            add("S" + i, SUPPLY_LITRES);
        }
        for (int i = 0; i < BOTTLES; i++) {
            add("B" + i, BOTTLE_LITRES);
        }
        while (facts.size() < count) {
            morning();
            fill("B" + chance.nextInt(BOTTLES));
            now = now.plus(Duration.ofHours(23));
        }
        facts.subList(count, facts.size()).clear();
    }

    private void add(String name, double litres) {
        cylinders.add(new MeteredCylinder(name, Volume.ofLitres(litres), VolumeOrigin.STAMPED));
        gauges.add(Gauge.of("G" + name, GaugeScale.of(315, 1, PressureUnit.BAR), new GaugeAccuracy.OfFullScale(1.6)));
    }

    private void morning() {
        for (int i = 0; i < SUPPLIES; i++) {
            facts.add(new ReadingTaken(reading("S" + i, bar[i]), Since.KEPT_SHUT));
        }
        if (bar[0] < 50) {
            System.arraycopy(bar, 1, bar, 0, SUPPLIES - 1);
            bar[SUPPLIES - 1] = 200;
            Arrays.sort(bar);
            for (int i = 0; i < SUPPLIES; i++) {
                facts.add(new SupplyExchanged("S" + i, reading("S" + i, bar[i])));
            }
        }
    }

    private void fill(String bottle) {
        double bottle_bar = 30;
        facts.add(new ReadingTaken(reading(bottle, bottle_bar), Since.MAYBE_USED));
        for (int i : new int[] {0, SUPPLIES - 1}) {
            double after = Math.min(
                    150, (SUPPLY_LITRES * bar[i] + BOTTLE_LITRES * bottle_bar) / (SUPPLY_LITRES + BOTTLE_LITRES));
            bar[i] -= (after - bottle_bar) * BOTTLE_LITRES / SUPPLY_LITRES;
            bottle_bar = after;
            now = now.plus(Duration.ofMinutes(6));
            facts.add(new StageMade(
                    now, "S" + i, bottle, i == 0, null, reading("S" + i, bar[i]), reading(bottle, bottle_bar)));
        }
    }

    private GaugeReading reading(String cylinder, double true_bar) {
        double shown = Math.max(0, Math.rint(true_bar + chance.nextGaussian()));
        Temperature temperature = Temperature.ofCelsius(15 + chance.nextGaussian());
        return new GaugeReading(
                now,
                cylinder,
                "G" + cylinder,
                GaugePressure.ofBar(shown),
                GasTemperature.measured(temperature, ContentsAssumptions.standard()));
    }
}
