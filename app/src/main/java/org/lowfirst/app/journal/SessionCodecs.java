package org.lowfirst.app.journal;

import static org.lowfirst.app.journal.Parts.write;

import java.util.List;
import java.util.Locale;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionFact;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;

/** A session and its plan: how each kind of fact is written. */
final class SessionCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "session.begun",
                    1,
                    SessionFact.SessionBegun.class,
                    f -> of(f).with("aim", f.aim().name().toLowerCase(Locale.ROOT))
                            .with("bank", f.bank())
                            .withAll(
                                    "wishes",
                                    f.wishes().stream()
                                            .map(SessionCodecs::written)
                                            .toList()),
                    p -> new SessionFact.SessionBegun(
                            session(p),
                            p.textOrNull("bank"),
                            aim(p.text("aim")),
                            p.parts("wishes", SessionCodecs::wish))),
            new FactCodec<>(
                    "session.planned",
                    1,
                    SessionFact.SessionPlanned.class,
                    f -> of(f).withAll(
                                    "stages",
                                    f.stages().stream()
                                            .map(SessionCodecs::written)
                                            .toList()),
                    p -> new SessionFact.SessionPlanned(session(p), p.parts("stages", SessionCodecs::stage))),
            new FactCodec<>(
                    "session.stage-skipped",
                    1,
                    SessionFact.StageSkipped.class,
                    f -> of(f).with("fill", f.fill().value())
                            .with("reason", f.reason())
                            .with("supply", f.supply().value()),
                    p -> new SessionFact.StageSkipped(
                            session(p), fill(p), new SupplyId(p.text("supply")), p.text("reason"))),
            new FactCodec<>(
                    "session.bottle-left-out",
                    1,
                    SessionFact.BottleLeftOut.class,
                    f -> of(f).with("fill", f.fill().value()).with("reason", f.reason()),
                    p -> new SessionFact.BottleLeftOut(session(p), fill(p), p.text("reason"))),
            new FactCodec<>(
                    "session.ended",
                    1,
                    SessionFact.SessionEnded.class,
                    f -> of(f).with("reason", f.reason()),
                    p -> new SessionFact.SessionEnded(session(p), p.text("reason"))));

    private SessionCodecs() {}

    private static Payload of(SessionFact fact) {
        return new Payload().with("session", fact.session().value());
    }

    private static SessionId session(Payload p) {
        return new SessionId(p.text("session"));
    }

    private static FillId fill(Payload p) {
        return new FillId(p.text("fill"));
    }

    private static SessionAim aim(String text) {
        for (SessionAim aim : SessionAim.values()) {
            if (aim.name().toLowerCase(Locale.ROOT).equals(text)) {
                return aim;
            }
        }
        throw new JsonFault("the aim " + text + " is not known", 0);
    }

    private static Payload written(SessionWish wish) {
        StatedPressure floor = wish.floor();
        return new Payload()
                .with("before", write(wish.before()))
                .with("bottle", wish.bottle().value())
                .with("fill", wish.fill().value())
                .with("floor", floor == null ? null : write(floor))
                .with("priority", (long) wish.priority())
                .with("target", write(wish.target()));
    }

    private static SessionWish wish(Payload p) {
        return new SessionWish(
                fill(p),
                new BottleId(p.text("bottle")),
                p.part("before", Parts::reading),
                p.part("target", Parts::pressure),
                p.partOrNull("floor", Parts::pressure),
                (int) p.number("priority"));
    }

    private static Payload written(PlannedStage stage) {
        return new Payload()
                .with("atStop", stage.atStop())
                .with("fill", stage.fill().value())
                .with("supply", stage.supply().value())
                .with("until", write(stage.until()));
    }

    private static PlannedStage stage(Payload p) {
        return new PlannedStage(
                fill(p), new SupplyId(p.text("supply")), p.part("until", Parts::pressure), p.truth("atStop"));
    }
}
