package org.lowfirst.app.virtual;

import java.time.Duration;
import java.time.Instant;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.Rest;
import org.lowfirst.transfer.warm.Surroundings;
import org.lowfirst.transfer.warm.WarmModel;
import org.lowfirst.transfer.warm.WarmState;

/**
 * A cylinder at the bench: what is in it and how warm, up to some moment. It is brought forward when somebody looks at it. Not
 * thread-safe.
 */
final class VirtualCylinder {

    /** The room counts as steady for so long. */
    static final Duration STEP = Duration.ofMinutes(20);

    /** After so long shut, gas and wall are as warm as the room; walls of supplies take 1 to 2 hours for most of it. */
    private static final Duration SETTLED_AFTER = Duration.ofHours(12);

    private static final double DAY_S = 86_400.0;

    private final CylinderTruth truth;
    private final WarmModel model;
    private final VirtualRoom room;
    private WarmState state;
    private Instant at;

    VirtualCylinder(CylinderTruth truth, WarmModel model, VirtualRoom room, Instant at) {
        this.truth = truth;
        this.model = model;
        this.room = room;
        this.at = at;
        this.state = WarmState.settled(truth.vessel(), truth.settled(), surroundings(at), model.equation())
                .orElseThrow();
    }

    CylinderTruth truth() {
        return truth;
    }

    WarmState state() {
        return state;
    }

    Surroundings surroundings(Instant when) {
        return new Surroundings(room.at(when), StandardAtmosphere.PRESSURE);
    }

    /** What a perfect gauge shows. */
    GaugePressure pressure() {
        return state.gauge(surroundings(at), model.equation()).orElseThrow();
    }

    /** What a perfect gauge would show once gas and wall are as warm as the room now is. */
    GaugePressure settled() {
        Surroundings now = surroundings(at);
        return state.gaugeAt(now.temperature(), now, model.equation()).orElseThrow();
    }

    /** The same at another temperature of gas, wall and room. */
    GaugePressure settledAt(Temperature temperature) {
        return state.gaugeAt(temperature, surroundings(at), model.equation()).orElseThrow();
    }

    /** After a flow that ended at a moment. */
    void become(WarmState other, Instant when) {
        state = other;
        at = when;
    }

    /** Rests, shut, until a moment. */
    void restUntil(Instant when) {
        Duration gone = Duration.between(at, when);
        if (gone.compareTo(SETTLED_AFTER) > 0) {
            leak(gone);
            Surroundings then = surroundings(when);
            state = new WarmState(
                    truth.vessel(),
                    state.contents(),
                    then.temperature(),
                    state.wall().stream().map(layer -> then.temperature()).toList());
            at = when;
        }
        while (at.isBefore(when)) {
            Duration left = Duration.between(at, when);
            Duration piece = left.compareTo(STEP) > 0 ? STEP : left;
            Surroundings around = surroundings(at.plus(piece.dividedBy(2)));
            double seconds = piece.toNanos() * 1e-9;
            state = model.rest(Rest.lasting(state, around, seconds, seconds))
                    .orElseThrow()
                    .end();
            leak(piece);
            at = at.plus(piece);
        }
    }

    private void leak(Duration during) {
        double left = Math.exp(-truth.leakPerDay() * during.toMillis() / 1000.0 / DAY_S);
        Amount contents = new Amount(state.contents().moles() * left);
        state = new WarmState(truth.vessel(), contents, state.gas(), state.wall());
    }
}
