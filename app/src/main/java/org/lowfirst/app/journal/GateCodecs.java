package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.rules.PlusEntry;

/** What decides whether a bottle may be filled: how each kind of fact is written. */
final class GateCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "rule-book.adopted",
                    1,
                    GateFact.RuleBookAdopted.class,
                    f -> new Payload().with("text", f.text()),
                    p -> new GateFact.RuleBookAdopted(p.text("text"))),
            new FactCodec<>(
                    "bottle.marked",
                    1,
                    GateFact.BottleMarked.class,
                    f -> bottle(f.bottle()).with("marking", MarkingParts.write(f.marking())),
                    p -> new GateFact.BottleMarked(bottle(p), p.part("marking", MarkingParts::marking))),
            new FactCodec<>(
                    "plus-rating.entered",
                    1,
                    GateFact.PlusRatingEntered.class,
                    f -> bottle(f.bottle())
                            .with("source", f.entry().source())
                            .with("enteredBy", f.entry().enteredBy()),
                    p -> new GateFact.PlusRatingEntered(
                            bottle(p), new PlusEntry(p.text("source"), p.text("enteredBy")))),
            new FactCodec<>(
                    "plus-rating.withdrawn",
                    1,
                    GateFact.PlusRatingWithdrawn.class,
                    f -> bottle(f.bottle()).with("reason", f.reason()),
                    p -> new GateFact.PlusRatingWithdrawn(bottle(p), p.text("reason"))),
            new FactCodec<>(
                    "condition.answered",
                    1,
                    GateFact.ConditionAnswered.class,
                    f -> bottle(f.bottle())
                            .with("day", f.day().toString())
                            .with("answers", MarkingParts.write(f.answers()))
                            .with("lookedBy", f.lookedBy()),
                    p -> new GateFact.ConditionAnswered(
                            bottle(p),
                            MarkingParts.day(p.text("day")),
                            p.part("answers", MarkingParts::answers),
                            p.text("lookedBy"))),
            new FactCodec<>(
                    "bottle.found-open",
                    1,
                    GateFact.BottleFoundOpen.class,
                    f -> bottle(f.bottle()).with("day", f.day().toString()),
                    p -> new GateFact.BottleFoundOpen(bottle(p), MarkingParts.day(p.text("day")))),
            new FactCodec<>(
                    "bottle.inspected-empty",
                    1,
                    GateFact.EmptyBottleInspected.class,
                    f -> bottle(f.bottle()).with("day", f.day().toString()).with("inspectedBy", f.inspectedBy()),
                    p -> new GateFact.EmptyBottleInspected(
                            bottle(p), MarkingParts.day(p.text("day")), p.text("inspectedBy"))),
            new FactCodec<>(
                    "bottle.hammer-tested",
                    1,
                    GateFact.HammerTested.class,
                    f -> bottle(f.bottle()).with("day", f.day().toString()).with("testedBy", f.testedBy()),
                    p -> new GateFact.HammerTested(bottle(p), MarkingParts.day(p.text("day")), p.text("testedBy"))),
            new FactCodec<>(
                    "refusals.set-aside",
                    1,
                    GateFact.RefusalsSetAside.class,
                    f -> bottle(f.bottle())
                            .with("day", f.day().toString())
                            .withAll(
                                    "refusals",
                                    f.refusals().stream()
                                            .map(MarkingParts::write)
                                            .toList())
                            .with("filler", f.filler())
                            .with("second", f.second())
                            .with("reason", f.reason()),
                    p -> new GateFact.RefusalsSetAside(
                            bottle(p),
                            MarkingParts.day(p.text("day")),
                            p.parts("refusals", MarkingParts::refusal),
                            p.text("filler"),
                            p.text("second"),
                            p.text("reason"))));

    private GateCodecs() {}

    private static Payload bottle(BottleId id) {
        return new Payload().with("bottle", id.value());
    }

    private static BottleId bottle(Payload p) {
        return new BottleId(p.text("bottle"));
    }
}
