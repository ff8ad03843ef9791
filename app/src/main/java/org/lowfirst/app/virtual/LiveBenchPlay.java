package org.lowfirst.app.virtual;

import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.IdSource;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.transfer.warm.RiseRate;

/**
 * A virtual bench played before people's eyes: somebody follows the guide through served pages and every step is told; what was
 * hidden is told at the end. The same seed plays the same. Confined to one thread, apart from {@link #clock}.
 */
public final class LiveBenchPlay {

    private static final StatedPressure TARGET = StatedPressure.of("150", PressureUnit.BAR);
    private static final List<Double> SUPPLIES_BAR = List.of(64.0, 108.0, 152.0, 194.0);

    /** The third supply loses so much of its contents a day. */
    private static final List<Double> LEAKS = List.of(0.0, 0.0, 0.01, 0.0);

    private static final int BOTTLES = 4;
    private static final double THERMOMETER_K = 1.0;

    private final SplittableRandom chance;
    private final InventedBench invented;
    private final VirtualBench bench;
    private final VirtualPerson person;
    private final Wording wording;
    private final List<FillSeen> seen = new ArrayList<>();

    /** @param start when it begins at the virtual bench */
    public LiveBenchPlay(long seed, Instant start, Locale locale) {
        this.chance = new SplittableRandom(seed);
        this.invented = InventedBench.draw(new BenchId("virtual"), SUPPLIES_BAR, LEAKS, BOTTLES, chance);
        VirtualRoom room = new VirtualRoom(start, Temperature.ofCelsius(18), 1.5, 3.0, chance.split());
        this.bench = new VirtualBench(start, room, RiseRate.ofBarPerMinute(14), invented.truths());
        this.person = new VirtualPerson(
                bench, invented.onSupplies(), invented.onBottle(), THERMOMETER_K, Patience.BRISK, chance.split());
        this.wording = Wording.of(LiveBenchPlay.class, locale);
    }

    /** The time at the virtual bench. */
    public Clock clock() {
        return new VirtualClock(bench::now);
    }

    /** Address of the bench below that of the pages. */
    public URI address(URI pages) {
        return pages.resolve("/at/" + invented.id() + "/");
    }

    /** Opens the bench and enters its supplies and bottles. */
    public void enter(Benches benches, IdSource ids) {
        invented.enter(benches, bench, person, ids);
    }

    /**
     * Plays fills through the pages, half a day or more apart.
     *
     * @param pages address of the pages
     * @return false when somebody stopped it before the last one
     */
    public boolean play(URI pages, int fills, LiveTelling telling) {
        PagesGuidance guidance = new PagesGuidance(address(pages), InventedBench.SOMEBODY);
        try {
            for (int number = 0; number < fills; number++) {
                bench.pass(Duration.ofHours(14 + chance.nextInt(34)));
                readings(guidance, telling);
                fill(number, guidance, telling);
            }
            bench.pass(Duration.ofHours(20));
            readings(guidance, telling);
            return true;
        } catch (LiveStopped stopped) {
            return false;
        }
    }

    private void fill(int number, PagesGuidance guidance, LiveTelling telling) {
        InventedBottle bottle = invented.bottles().get(number % BOTTLES);
        CylinderTruth comes = bottle.comesWith(GaugePressure.ofBar(10.0 + 30.0 * chance.nextDouble()));
        StatedTemperature thermometer = person.readThermometer(TemperatureUnit.CELSIUS);
        FillOrder order = new FillOrder(comes.name(), person.readBottle(comes.settled()), TARGET, thermometer);
        FillSeen filled =
                person.fill(comes, order, new ToldGuidance(guidance, bench::now, telling, wording), Slip.NONE);
        seen.add(filled);
        telling.say(wording.text(
                "live.done", Map.of("bottle", order.bottle(), "shown", ToldGuidance.said(filled.endShown()))));
    }

    private void readings(PagesGuidance guidance, LiveTelling telling) {
        StatedTemperature thermometer = person.readThermometer(TemperatureUnit.CELSIUS);
        Map<String, StatedPressure> readings = new LinkedHashMap<>();
        bench.supplies().forEach(name -> readings.put(name, person.readSupply(name)));
        telling.say(wording.text(
                "live.day",
                Map.of(
                        "day", bench.now().toString().substring(0, 10),
                        "temperature", ToldGuidance.said(thermometer),
                        "readings",
                                readings.entrySet().stream()
                                        .map(one -> one.getKey() + " " + ToldGuidance.said(one.getValue()))
                                        .collect(Collectors.joining(", ")))));
        guidance.enterReadings(readings, thermometer.value().toPlainString());
    }

    /** What was hidden, beside what the bench makes of its readings. */
    public List<String> truth(Benches benches) {
        return new LiveTruth(invented, bench, wording)
                .lines(benches.judgingReadings().history(invented.id()), seen);
    }
}
