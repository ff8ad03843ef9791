package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WaterVolume;

/** Who enters what when in the story of the demo bench. One chance and one clock for all of it. */
final class DemoPen {

    static final BenchId BENCH = new BenchId("story");

    /** Those who fill alone. */
    static final List<String> FILLERS = List.of("Wren", "Tobias", "Ingrid");

    final Benches benches;
    private final SetClock clock;
    private final Random random = new Random(1903);
    private int keys;
    private String celsius = "17";

    DemoPen(Benches benches, SetClock clock) {
        this.benches = benches;
        this.clock = clock;
    }

    /** @return 0 or more, below {@code most} */
    int draw(int most) {
        return random.nextInt(most);
    }

    String somebody() {
        return FILLERS.get(draw(FILLERS.size()));
    }

    void set(LocalDate day, int hour, int minute) {
        clock.set(day.atTime(LocalTime.of(hour, minute)).toInstant(ZoneOffset.UTC));
    }

    void minutes(int minutes) {
        clock.forward(Duration.ofMinutes(minutes));
    }

    /** The weather of the day. */
    void temper() {
        celsius = Integer.toString(13 + draw(8));
    }

    Instant now() {
        return clock.instant();
    }

    LocalDate today() {
        return LocalDate.ofInstant(now(), ZoneOffset.UTC);
    }

    /** Twenty seconds later. */
    Submission by(String author) {
        keys++;
        clock.forward(Duration.ofSeconds(20));
        return new Submission(new EntryKey("story-" + keys), author, now(), false);
    }

    Submission submission() {
        return by(somebody());
    }

    Reading reads(int bar) {
        return new Reading(bar(bar), now(), temperature(celsius), false, null);
    }

    static long recorded(Recording recording) {
        if (recording instanceof Recording.Recorded recorded) {
            return recorded.entries().get(0).seq();
        }
        throw new AssertionError(recording.toString());
    }

    static BottleId bottle(String name) {
        return new BottleId("demo-bottle-" + name.toLowerCase(Locale.ROOT).replace(' ', '-'));
    }

    static SupplyId supply(String name) {
        return new SupplyId("demo-supply-" + name);
    }

    static StatedPressure bar(int value) {
        return new StatedPressure(BigDecimal.valueOf(value), PressureUnit.BAR);
    }

    static StatedTemperature temperature(String celsius) {
        return StatedTemperature.of(celsius, TemperatureUnit.CELSIUS);
    }

    static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }

    static int rounded(GaugePressure pressure) {
        return (int) Math.round(pressure.toBar());
    }
}
