package org.lowfirst.web.fill;

import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;

/** What a bottle reads and what it should read, as typed. */
final class Wish {

    private final Form form;
    private final @Nullable Reading before;
    private final @Nullable StatedPressure target;

    private Wish(Form form, @Nullable Reading before, @Nullable StatedPressure target) {
        this.form = form;
        this.before = before;
        this.target = target;
    }

    static Wish read(Map<String, String> typed, Bottle bottle, BenchNow now) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure reads = reader.pressure("before");
        @Nullable StatedPressure target = reader.pressure("target");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        if (reads != null) {
            now.offScale(bottle.id(), reads).ifPresent(sentence -> reader.fault("before", sentence));
        }
        if (reads != null && target != null && target.compareTo(reads) <= 0) {
            reader.fault(
                    "target",
                    now.words()
                            .of(
                                    "fault.target",
                                    now.figures().asTyped(target),
                                    now.figures().asTyped(reads)));
        }
        @Nullable Reading before = reads == null ? null : now.reading(reads, temperature);
        return new Wish(reader.form(), before, target);
    }

    Form form() {
        return form;
    }

    /** Whether both readings were understood and make sense together. */
    boolean ready() {
        return form.sound();
    }

    /** What the bottle reads; asked for only when {@link #ready}. */
    Reading before() {
        return Objects.requireNonNull(before);
    }

    /** The target as typed; asked for only when {@link #ready}. */
    StatedPressure target() {
        return Objects.requireNonNull(target);
    }
}
