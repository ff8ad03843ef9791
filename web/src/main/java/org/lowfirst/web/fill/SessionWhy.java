package org.lowfirst.web.fill;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Surprise;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.workplace.BenchNow;

/** Says why the rest of a session was planned again. */
public record SessionWhy(BenchNow now, OpenSession session) {

    public List<String> sentences(List<Surprise> why) {
        return why.stream().map(this::sentence).toList();
    }

    private String sentence(Surprise one) {
        @Nullable FillId fill = one.fill();
        @Nullable SupplyId supply = one.supply();
        boolean first = one.kind() == Surprise.Kind.READING && supply == null;
        return now.words()
                .of(
                        "session.now.why."
                                + (first ? "first" : one.kind().name().toLowerCase(Locale.ROOT)),
                        fill == null ? "" : bottle(fill),
                        supply == null ? "" : supply(supply),
                        shown(one.expected()),
                        shown(one.read()),
                        allowed(one.allowed()));
    }

    private String allowed(@Nullable GaugePressure allowed) {
        return allowed == null ? "" : now.figures().pressureWithUnit(allowed);
    }

    /** A pressure with its unit; empty for none. */
    public String shown(@Nullable StatedPressure pressure) {
        return pressure == null ? "" : now.figures().pressureWithUnit(pressure.gauge());
    }

    /** Name of a supply. */
    public String supply(SupplyId id) {
        return now.bench()
                .findSupply(id)
                .map(Supply::details)
                .map(details -> details.name())
                .orElse(id.value());
    }

    /** Name of the bottle of a fill. */
    public String bottle(FillId fill) {
        return session.findWish(fill)
                .flatMap(wish -> now.bench().findBottle(wish.bottle()))
                .map(Bottle::details)
                .map(details -> details.name())
                .orElse(fill.value());
    }
}
