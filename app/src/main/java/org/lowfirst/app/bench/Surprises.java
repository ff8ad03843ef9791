package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.ReadingTolerance;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Bench;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.OpenSession.Happened;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;

/** Finds out whether the plan of a session still fits. */
record Surprises(Bench bench, OpenSession session) {

    /** Why the rest must be planned again; empty when the plan still fits. */
    List<Surprise> now() {
        List<Surprise> found = new ArrayList<>(of(session.since()));
        session.remaining().stream()
                .map(PlannedStage::supply)
                .distinct()
                .filter(supply -> !usable(supply))
                .forEach(supply -> found.add(new Surprise(Surprise.Kind.BANK, null, supply, null, null, null)));
        return found;
    }

    /** Why the plan in force was made. */
    List<Surprise> earlier() {
        return of(session.earlier());
    }

    private List<Surprise> of(List<Happened> happened) {
        return happened.stream().flatMap(one -> surprise(one).stream()).toList();
    }

    private boolean usable(org.lowfirst.station.SupplyId id) {
        return bench.findSupply(id).map(Supply::connected).orElse(false)
                && bench.stand().turn(id).planned();
    }

    private Optional<Surprise> surprise(Happened one) {
        Reading read = one.read();
        StatedPressure expected = one.expected();
        if (read == null) {
            Surprise.Kind kind = one.supply() == null ? Surprise.Kind.LEFT_OUT : Surprise.Kind.SKIPPED;
            return Optional.of(new Surprise(kind, one.fill(), one.supply(), null, null, null));
        } else if (expected == null) {
            return Optional.of(
                    new Surprise(Surprise.Kind.UNPLANNED, one.fill(), one.supply(), null, read.pressure(), null));
        }
        GaugePressure allowed = allowed(one.fill(), read);
        double off_Pa =
                Math.abs(read.pressure().gauge().pascals() - expected.gauge().pascals());
        return allowed == null || off_Pa <= allowed.pascals()
                ? Optional.empty()
                : Optional.of(new Surprise(
                        Surprise.Kind.READING, one.fill(), one.supply(), expected, read.pressure(), allowed));
    }

    private @Nullable GaugePressure allowed(FillId fill, Reading read) {
        return session.findWish(fill)
                .map(wish -> ReadingTolerance.of(bench, wish.bottle(), read))
                .orElse(null);
    }
}
