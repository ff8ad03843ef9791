package org.lowfirst.web.warm;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.StopAdvice;
import org.lowfirst.planning.warm.StopPlan;
import org.lowfirst.station.WarmStop;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.warm.SettlePage.SettleSheet;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes where to stop and what the bottle settles to. */
final class SettleWriter {

    private static final double S_PER_MINUTE = 60.0;

    /** Beyond so many minutes hours are said. */
    private static final double LONG_MINUTES = 180.0;

    private final BenchNow now;
    private final Words words;
    private final Figures figures;

    SettleWriter(BenchNow now) {
        this.now = now;
        this.words = now.words();
        this.figures = now.figures();
    }

    SettleSheet sheet(StopAdvice advice, SettleFields fields) {
        StopPlan plan = advice.plan();
        @Nullable WarmStop permission = advice.permission();
        return new SettleSheet(
                plan.shutNow(),
                figures.pressure(plan.stop().reading()),
                figures.pressure(plan.ifShutNow().atBench()),
                words.of("settle.full", whole(plan.ifShutNow().percentFull())),
                wait(plan.wait_s()),
                advice.sentences(),
                permission == null ? "" : words.of("warm-stops.note", permission.responsible(), permission.followed()),
                assumed(advice, fields),
                advice.cautions(now.words().locale()));
    }

    private List<String> assumed(StopAdvice advice, SettleFields fields) {
        List<String> assumed = new ArrayList<>(advice.assumed());
        @Nullable Feel feel = fields.feel();
        if (feel != null && fields.gas() == null) {
            assumed.add(words.of(
                    "settle.felt", figures.temperature(advice.plan().now().gas())));
        }
        return assumed;
    }

    private String wait(OptionalDouble wait_s) {
        if (wait_s.isEmpty()) {
            return words.of("settle.wait.long");
        }
        double minutes = Math.ceil(wait_s.getAsDouble() / S_PER_MINUTE);
        if (minutes > LONG_MINUTES) {
            return words.of("settle.wait.hours", whole(Math.ceil(minutes / 60.0)));
        }
        return minutes < 1.0 ? words.of("settle.wait.none") : words.of("settle.wait", whole(minutes));
    }

    private static String whole(double value) {
        return String.format(Figures.LOCALE, "%.0f", value);
    }
}
