package org.lowfirst.planning.warm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Change;
import org.lowfirst.planning.Turn;
import org.lowfirst.planning.warm.FillSchedule.SupplyAfter;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.Opening;
import org.lowfirst.transfer.warm.Rest;
import org.lowfirst.transfer.warm.Sampling;
import org.lowfirst.transfer.warm.Settling;
import org.lowfirst.transfer.warm.WarmEnding;
import org.lowfirst.transfer.warm.WarmFill;
import org.lowfirst.transfer.warm.WarmPoint;
import org.lowfirst.transfer.warm.WarmRefusal;
import org.lowfirst.transfer.warm.WarmSource;
import org.lowfirst.transfer.warm.WarmStage;
import org.lowfirst.transfer.warm.WarmState;
import org.lowfirst.transfer.warm.WarmVessel;

/** One fill being worked through on a clock. Mutable, one run only. */
final class FillOnAClock {

    /** A supply, how it is and since when. */
    private static final class Track {
        final TimedSupply supply;
        WarmState state;
        double since_s;

        Track(TimedSupply supply, WarmState state) {
            this.supply = supply;
            this.state = state;
        }
    }

    private final FillInTimeRequest request;
    private final WarmBench bench;
    private final FillLimits limits;
    private final double interval_s;
    private final List<Track> tracks = new ArrayList<>();
    private final List<Leg> legs = new ArrayList<>();
    private final List<SchedulePoint> series = new ArrayList<>();
    private WarmState bottle;
    private Hose hose;
    private double now_s;
    private double peak_K;
    private double lowest_K;
    private boolean complete;
    private @Nullable WarmRefusal refusal;

    /** @param interval_s time between two points of the series; infinite for none but the ends */
    FillOnAClock(FillInTimeRequest request, FillLimits limits, double interval_s) {
        this.request = request;
        this.limits = limits;
        this.interval_s = interval_s;
        bench = request.bench();
        bottle = settled(request.bottle().waterVolume(), request.bottle().wall(), request.reading());
        for (TimedSupply supply : request.bank()) {
            tracks.add(new Track(supply, settled(supply.waterVolume(), supply.wall(), supply.reading())));
        }
        hose = Hose.purged(
                request.hose(),
                bench.ambient(),
                bench.gas().isotherm(bench.temperature()).orElseThrow());
        peak_K = bench.temperature().kelvin();
        lowest_K = peak_K;
    }

    private WarmState settled(
            org.lowfirst.gas.Volume volume, org.lowfirst.transfer.warm.Wall wall, GaugePressure reading) {
        return WarmState.settled(new WarmVessel(volume, wall), reading, bench.surroundings(), bench.gas())
                .orElseThrow();
    }

    Answer<FillSchedule> run() {
        throughTheBank();
        for (int i = 0;
                i < request.pace().topUps()
                        && refusal == null
                        && !full()
                        && request.pace().rest_s() > 0.0;
                i++) {
            rest(Leg.Kind.REST, request.pace().rest_s());
            throughTheBank();
        }
        if (refusal != null) {
            return Answer.refused(refusal);
        }
        return Answer.of(schedule());
    }

    private boolean full() {
        return bottle.density().compareTo(limits.most()) >= 0
                || bottle.density().molesPerCubicMetre() >= limits.most().molesPerCubicMetre() * (1.0 - 1e-9);
    }

    /** Each supply that may be opened once, lowest first; those that are used first before the others. */
    private void throughTheBank() {
        complete = false;
        List<Track> order = new ArrayList<>(tracks);
        order.removeIf(track -> track.supply.turn() == Turn.HELD_BACK);
        order.sort(Comparator.comparing((Track track) -> track.supply.turn() != Turn.FIRST)
                .thenComparing(track -> track.state.density()));
        boolean open = false;
        for (Track track : order) {
            if (complete || refusal != null) {
                return;
            }
            open = stage(track, open) || open;
        }
    }

    /** Opens one supply; answers whether anything moved. */
    private boolean stage(Track track, boolean changeover) {
        if (!above(track)) {
            return false;
        }
        if (changeover && request.pace().changeover_s() > 0.0) {
            rest(Leg.Kind.CHANGEOVER, request.pace().changeover_s());
        }
        letRest(track);
        if (refusal != null) {
            return false;
        }
        Answer<WarmFill> answer = bench.model()
                .fill(new WarmStage(
                        new WarmSource.FromSupply(track.state),
                        hose,
                        bottle,
                        new Opening.SteadyRise(
                                request.pace().rate(), request.pace().widest()),
                        limits.stop(),
                        bench.surroundings(),
                        new Sampling(interval_s, Assumptions.seconds("fill.longest"))));
        if (!(answer instanceof Answer.Given<WarmFill> given)) {
            refusal = ((Answer.Refused<WarmFill>) answer).refusal();
            return false;
        }
        WarmFill fill = given.value();
        if (fill.ending() == WarmEnding.NOTHING_MOVED) {
            return false;
        }
        noteStage(track, fill);
        return true;
    }

    private void noteStage(Track track, WarmFill fill) {
        List<WarmPoint> points = fill.series();
        WarmPoint first = points.get(0);
        WarmPoint last = points.get(points.size() - 1);
        for (WarmPoint point : points) {
            series.add(new SchedulePoint(
                    now_s + point.seconds(),
                    legs.size(),
                    point.bottle(),
                    point.bottleGas(),
                    point.bottleWall(),
                    point.supply(),
                    point.supplyGas()));
        }
        legs.add(new Leg(
                Leg.Kind.STAGE,
                track.supply.name(),
                now_s,
                now_s + fill.seconds(),
                new Change(first.bottle(), last.bottle()),
                new Change(first.supply(), last.supply()),
                fill.ending(),
                fill.peakBottleGas()));
        now_s += fill.seconds();
        bottle = fill.bottle();
        track.state = ((WarmSource.FromSupply) fill.source()).state();
        track.since_s = now_s;
        hose = fill.hose();
        peak_K = Math.max(peak_K, fill.peakBottleGas().kelvin());
        lowest_K = Math.min(lowest_K, fill.lowestSupplyGas().kelvin());
        complete = fill.ending() == WarmEnding.FULL || fill.ending() == WarmEnding.STOP;
    }

    private boolean above(Track track) {
        return reading(track.state).compareTo(reading(bottle)) > 0;
    }

    /** A supply that has stood since it was last open. */
    private void letRest(Track track) {
        double idle_s = now_s - track.since_s;
        if (idle_s <= 0.0 || track.since_s == 0.0) {
            return;
        }
        Answer<Settling> answer =
                bench.model().rest(Rest.lasting(track.state, bench.surroundings(), idle_s, Double.POSITIVE_INFINITY));
        if (answer instanceof Answer.Given<Settling> given) {
            track.state = given.value().end();
            track.since_s = now_s;
        } else {
            refusal = ((Answer.Refused<Settling>) answer).refusal();
        }
    }

    private void rest(Leg.Kind kind, double seconds) {
        double every_s = kind == Leg.Kind.REST
                ? interval_s * Assumptions.seconds("rest.interval") / Assumptions.seconds("series.interval")
                : interval_s;
        Answer<Settling> answer = bench.model().rest(Rest.lasting(bottle, bench.surroundings(), seconds, every_s));
        if (!(answer instanceof Answer.Given<Settling> given)) {
            refusal = ((Answer.Refused<Settling>) answer).refusal();
            return;
        }
        Settling settling = given.value();
        for (Settling.Point point : settling.series()) {
            series.add(new SchedulePoint(
                    now_s + point.seconds(), legs.size(), point.reading(), point.gas(), point.wall(), null, null));
        }
        GaugePressure before = reading(bottle);
        Temperature warmest = bottle.gas();
        bottle = settling.end();
        legs.add(new Leg(kind, null, now_s, now_s + seconds, new Change(before, reading(bottle)), null, null, warmest));
        now_s += seconds;
    }

    private GaugePressure reading(WarmState state) {
        return state.gauge(bench.surroundings(), bench.gas()).orElseThrow();
    }

    private FillSchedule schedule() {
        Density density = bottle.density();
        Density ambient =
                bench.gas().density(bench.ambient(), bench.temperature()).orElseThrow();
        Amount vented = hose.vent(ambient).lost();
        List<SupplyAfter> after = tracks.stream()
                .map(track -> new SupplyAfter(
                        track.supply.name(),
                        track.state
                                .gaugeAt(bench.temperature(), bench.surroundings(), bench.gas())
                                .orElseThrow()))
                .toList();
        return new FillSchedule(
                request,
                legs,
                now_s,
                reading(bottle),
                StopAndSettle.settled(request.bottle(), bench, limits, density),
                100.0 * density.molesPerCubicMetre() / limits.most().molesPerCubicMetre(),
                complete || full(),
                new Temperature(peak_K),
                new Temperature(lowest_K),
                after,
                vented,
                series,
                FillInTime.cautions(request));
    }
}
