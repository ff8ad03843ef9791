package org.lowfirst.app.virtual;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedQuantity;

/** Tells each step the pages show and each reading that is entered, then passes it on. */
final class ToldGuidance implements Guidance {

    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final PagesGuidance pages;
    private final Supplier<Instant> now;
    private final LiveTelling telling;
    private final Wording wording;

    ToldGuidance(PagesGuidance pages, Supplier<Instant> now, LiveTelling telling, Wording wording) {
        this.pages = pages;
        this.now = now;
        this.telling = telling;
        this.wording = wording;
    }

    @Override
    public NextStep start(FillOrder order) {
        say(
                "live.fill",
                Map.of(
                        "bottle", order.bottle(),
                        "before", said(order.before()),
                        "target", said(order.target()),
                        "temperature", said(order.temperature())));
        return shown(pages.start(order));
    }

    @Override
    public NextStep done(NextStep step) {
        return shown(pages.done(step));
    }

    @Override
    public @Nullable NextStep read(NextStep step, StatedPressure bottle, @Nullable StatedPressure supply) {
        if (supply == null) {
            say("live.read.bottle", Map.of("clock", clock(), "bottle", said(bottle)));
        } else {
            say(
                    "live.read",
                    Map.of(
                            "clock", clock(),
                            "bottle", said(bottle),
                            "supply", step.supply(),
                            "reading", said(supply)));
        }
        @Nullable NextStep next = pages.read(step, bottle, supply);
        return next == null ? null : shown(next);
    }

    @Override
    public NextStep comeBack(OpenValves valves) {
        say("live.away", Map.of("clock", clock()));
        return shown(pages.comeBack(valves));
    }

    private NextStep shown(NextStep step) {
        if (step.position().phase() != Phase.ENTER_READING) {
            say("live.step", Map.of("clock", clock(), "told", pages.told()));
        }
        return step;
    }

    private void say(String key, Map<String, String> values) {
        telling.say(wording.text(key, values));
    }

    private String clock() {
        return CLOCK.format(now.get());
    }

    static String said(StatedQuantity quantity) {
        return quantity.value().toPlainString() + " " + quantity.symbol();
    }
}
