package org.lowfirst.app.journal;

import static org.lowfirst.app.journal.Parts.write;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WarmStop;

/** Every kind of fact and how it is written. Kinds are for ever; a changed payload is a new version. */
final class FactCodecs {

    private static final List<FactCodec<?>> CORE = List.of(
            new FactCodec<>(
                    "bench.opened",
                    1,
                    Fact.BenchOpened.class,
                    f -> new Payload().with("settings", write(f.settings())),
                    p -> new Fact.BenchOpened(p.part("settings", Parts::settings))),
            new FactCodec<>(
                    "bench.settings-changed",
                    1,
                    Fact.SettingsChanged.class,
                    f -> new Payload().with("settings", write(f.settings())),
                    p -> new Fact.SettingsChanged(p.part("settings", Parts::settings))),
            new FactCodec<>(
                    "supply.connected",
                    1,
                    Fact.SupplyConnected.class,
                    f -> supply(f.supply()).with("details", write(f.details())).with("reading", write(f.reading())),
                    p -> new Fact.SupplyConnected(
                            supply(p), p.part("details", Parts::supplyDetails), p.part("reading", Parts::reading))),
            new FactCodec<>(
                    "supply.amended",
                    1,
                    Fact.SupplyAmended.class,
                    f -> supply(f.supply()).with("details", write(f.details())),
                    p -> new Fact.SupplyAmended(supply(p), p.part("details", Parts::supplyDetails))),
            new FactCodec<>(
                    "supply.removed",
                    1,
                    Fact.SupplyRemoved.class,
                    f -> supply(f.supply())
                            .with("residual", orNull(f.residual()))
                            .with("reason", f.reason()),
                    p -> new Fact.SupplyRemoved(supply(p), p.partOrNull("residual", Parts::reading), p.text("reason"))),
            new FactCodec<>(
                    "supplies.two-opened-together",
                    1,
                    Fact.TwoOpenedTogether.class,
                    f -> new Payload()
                            .with("first", f.first().value())
                            .with("second", f.second().value())
                            .with("firstAfter", orNull(f.firstAfter()))
                            .with("secondAfter", orNull(f.secondAfter())),
                    p -> new Fact.TwoOpenedTogether(
                            new SupplyId(p.text("first")),
                            new SupplyId(p.text("second")),
                            p.partOrNull("firstAfter", Parts::reading),
                            p.partOrNull("secondAfter", Parts::reading))),
            new FactCodec<>(
                    "bottle.registered",
                    1,
                    Fact.BottleRegistered.class,
                    f -> bottle(f.bottle()).with("details", write(f.details())).with("reading", orNull(f.reading())),
                    p -> new Fact.BottleRegistered(
                            bottle(p),
                            p.part("details", Parts::bottleDetails),
                            p.partOrNull("reading", Parts::reading))),
            new FactCodec<>(
                    "bottle.amended",
                    1,
                    Fact.BottleAmended.class,
                    f -> bottle(f.bottle()).with("details", write(f.details())),
                    p -> new Fact.BottleAmended(bottle(p), p.part("details", Parts::bottleDetails))),
            new FactCodec<>(
                    "bottle.retired",
                    1,
                    Fact.BottleRetired.class,
                    f -> bottle(f.bottle()).with("reason", f.reason()),
                    p -> new Fact.BottleRetired(bottle(p), p.text("reason"))),
            new FactCodec<>(
                    "reading.taken",
                    1,
                    Fact.ReadingTaken.class,
                    f -> new Payload().with("cylinder", write(f.cylinder())).with("reading", write(f.reading())),
                    p -> new Fact.ReadingTaken(p.part("cylinder", Parts::cylinder), p.part("reading", Parts::reading))),
            new FactCodec<>(
                    "bottle.read-warm",
                    1,
                    Fact.WarmBottleRead.class,
                    f -> new Payload()
                            .with("bottle", f.bottle().value())
                            .with("reading", write(f.reading()))
                            .with("gas", write(f.gas())),
                    p -> new Fact.WarmBottleRead(
                            bottle(p), p.part("reading", Parts::reading), p.part("gas", Parts::temperature))),
            new FactCodec<>(
                    "fill.started",
                    1,
                    Fact.FillStarted.class,
                    f -> fill(f.fill())
                            .with("bottle", f.bottle().value())
                            .with("target", write(f.target()))
                            .with("before", write(f.before())),
                    p -> new Fact.FillStarted(
                            fill(p), bottle(p), p.part("target", Parts::pressure), p.part("before", Parts::reading))),
            new FactCodec<>(
                    "stage.recorded",
                    1,
                    Fact.StageRecorded.class,
                    f -> fill(f.fill()).with("stage", write(f.stage())),
                    p -> new Fact.StageRecorded(fill(p), p.part("stage", Parts::stage))),
            new FactCodec<>(
                    "fill.finished",
                    1,
                    Fact.FillFinished.class,
                    f -> fill(f.fill()).with("after", write(f.after())),
                    p -> new Fact.FillFinished(fill(p), p.part("after", Parts::reading))),
            new FactCodec<>(
                    "fill.abandoned",
                    1,
                    Fact.FillAbandoned.class,
                    f -> fill(f.fill()).with("reason", f.reason()),
                    p -> new Fact.FillAbandoned(fill(p), p.text("reason"))),
            new FactCodec<>(
                    "fill.recorded",
                    1,
                    Fact.FillRecorded.class,
                    f -> fill(f.fill())
                            .with("bottle", f.bottle().value())
                            .with("target", f.target() == null ? null : write(f.target()))
                            .with("before", write(f.before()))
                            .with("after", write(f.after()))
                            .withAll(
                                    "stages",
                                    f.stages().stream().map(Parts::write).toList()),
                    p -> new Fact.FillRecorded(
                            fill(p),
                            bottle(p),
                            p.partOrNull("target", Parts::pressure),
                            p.part("before", Parts::reading),
                            p.part("after", Parts::reading),
                            p.parts("stages", Parts::stage))),
            new FactCodec<>(
                    "gauge.described",
                    1,
                    Fact.GaugeDescribed.class,
                    f -> GaugeParts.write(f.gauge()),
                    p -> new Fact.GaugeDescribed(GaugeParts.gauge(p))),
            new FactCodec<>(
                    "gauge.retired",
                    1,
                    Fact.GaugeRetired.class,
                    f -> new Payload().with("gauge", f.gauge()).with("reason", f.reason()),
                    p -> new Fact.GaugeRetired(p.text("gauge"), p.text("reason"))),
            new FactCodec<>(
                    "warm-stop.allowed",
                    1,
                    Fact.WarmStopAllowed.class,
                    f -> new Payload()
                            .with("responsible", f.permission().responsible())
                            .with("followed", f.permission().followed()),
                    p -> new Fact.WarmStopAllowed(new WarmStop(p.text("responsible"), p.text("followed")))),
            new FactCodec<>(
                    "warm-stop.forbidden",
                    1,
                    Fact.WarmStopForbidden.class,
                    f -> new Payload().with("responsible", f.responsible()),
                    p -> new Fact.WarmStopForbidden(p.text("responsible"))),
            new FactCodec<>(
                    "entry.corrected",
                    1,
                    Fact.EntryCorrected.class,
                    f -> new Payload()
                            .with("corrected", f.corrected())
                            .with("reason", f.reason())
                            .with("replacement", f.replacement() == null ? null : nested(f.replacement())),
                    p -> new Fact.EntryCorrected(
                            p.number("corrected"),
                            p.text("reason"),
                            p.partOrNull("replacement", FactCodecs::unnested))));

    static final List<FactCodec<?>> ALL = Stream.of(
                    CORE,
                    GateCodecs.ALL,
                    CrewCodecs.ALL,
                    MoneyCodecs.ALL,
                    CareCodecs.ALL,
                    StandCodecs.ALL,
                    SessionCodecs.ALL,
                    OutlookCodecs.ALL)
            .<FactCodec<?>>flatMap(List::stream)
            .toList();

    private static final Map<String, FactCodec<?>> BY_KIND = new HashMap<>();
    private static final Map<Class<?>, FactCodec<?>> BY_TYPE = new HashMap<>();

    static {
        for (FactCodec<?> codec : ALL) {
            BY_KIND.put(codec.kind(), codec);
            BY_TYPE.put(codec.type(), codec);
        }
    }

    private FactCodecs() {}

    static FactCodec<?> getCodec(Fact fact) {
        FactCodec<?> codec = BY_TYPE.get(fact.getClass());
        if (codec == null) {
            throw new AssertionError("no codec for " + fact.getClass());
        }
        return codec;
    }

    static Optional<FactCodec<?>> findByKind(String kind) {
        return Optional.ofNullable(BY_KIND.get(kind));
    }

    /**
     * The fact that a payload of any known version holds.
     *
     * @throws NewerEntry when kind or version is not known to this program
     * @throws JsonFault when the payload does not hold such a fact
     */
    static Fact decode(String kind, int version, Map<String, @Nullable Object> payload) {
        FactCodec<?> codec = findByKind(kind)
                .orElseThrow(() -> new NewerEntry("entry of kind " + kind, ALL.size() + " other kinds"));
        if (version > codec.version()) {
            throw new NewerEntry(kind + " version " + version, kind + " version " + codec.version());
        }
        Payload current = new Payload(Upcasters.BUNDLED.upcast(kind, version, codec.version(), payload));
        try {
            return codec.decode(current);
        } catch (IllegalArgumentException e) {
            throw new JsonFault(String.valueOf(e.getMessage()), 0, e);
        }
    }

    private static Payload nested(Fact fact) {
        FactCodec<?> codec = getCodec(fact);
        return new Payload()
                .with("kind", codec.kind())
                .with("version", (long) codec.version())
                .with("payload", codec.encode(fact));
    }

    private static Fact unnested(Payload p) {
        return decode(
                p.text("kind"),
                (int) p.number("version"),
                p.part("payload", inner -> inner).members());
    }

    private static Payload supply(SupplyId id) {
        return new Payload().with("supply", id.value());
    }

    private static SupplyId supply(Payload p) {
        return new SupplyId(p.text("supply"));
    }

    private static Payload bottle(BottleId id) {
        return new Payload().with("bottle", id.value());
    }

    private static BottleId bottle(Payload p) {
        return new BottleId(p.text("bottle"));
    }

    private static Payload fill(FillId id) {
        return new Payload().with("fill", id.value());
    }

    private static FillId fill(Payload p) {
        return new FillId(p.text("fill"));
    }

    private static @Nullable Payload orNull(@Nullable Reading reading) {
        return reading == null ? null : Parts.write(reading);
    }
}
