package org.lowfirst.app.virtual;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.FlowArea;
import org.lowfirst.transfer.warm.Opening;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.Sampling;
import org.lowfirst.transfer.warm.Stop;
import org.lowfirst.transfer.warm.WarmEnding;
import org.lowfirst.transfer.warm.WarmFill;
import org.lowfirst.transfer.warm.WarmModel;
import org.lowfirst.transfer.warm.WarmSource;
import org.lowfirst.transfer.warm.WarmStage;

/**
 * The hidden truth of a bench. People move its valves and let time pass; gas flows where valves let it, also from the bottle back
 * into a supply that is lower. No hose. One supply may be open at a time; opening another is a mistake of the caller. Not
 * thread-safe, but for {@link #now}.
 */
public final class VirtualBench {

    /** After both gauges have met, gas follows as the bottle cools; so often the valve is looked at. */
    private static final Duration CREEP = Duration.ofMinutes(10);

    private static final GaugePressure NO_STOP = GaugePressure.ofBar(400);
    private static final FlowArea WIDEST = FlowArea.ofBore(0.003, 0.8);

    private final WarmModel model = WarmModel.oxygen();
    private final VirtualRoom room;
    private final RiseRate rise;
    private final Map<String, VirtualCylinder> supplies = new LinkedHashMap<>();
    private @Nullable VirtualCylinder bottle;
    private @Nullable VirtualCylinder open;
    private boolean bottleOpen;
    private boolean transferOpen;
    private volatile Instant now;

    /** @param rise how fast people let the bottle's gauge rise */
    public VirtualBench(Instant start, VirtualRoom room, RiseRate rise, List<CylinderTruth> supplies) {
        this.now = start;
        this.room = room;
        this.rise = rise;
        supplies.forEach(truth -> this.supplies.put(truth.name(), cylinder(truth)));
    }

    private VirtualCylinder cylinder(CylinderTruth truth) {
        return new VirtualCylinder(truth, model, room, now);
    }

    public Instant now() {
        return now;
    }

    public Temperature room() {
        return room.at(now);
    }

    public List<String> supplies() {
        return List.copyOf(supplies.keySet());
    }

    public OpenValves valves() {
        return new OpenValves(
                bottleOpen, transferOpen, open == null ? "" : open.truth().name());
    }

    /** What a perfect gauge on a supply shows. */
    public GaugePressure supplyPressure(String name) {
        return upToDate(supply(name)).pressure();
    }

    /** What a perfect gauge on a supply would show once it is as warm as {@code temperature}. */
    public GaugePressure supplySettled(String name, Temperature temperature) {
        return upToDate(supply(name)).settledAt(temperature);
    }

    /** What a perfect gauge on the bottle shows. */
    public GaugePressure bottlePressure() {
        return upToDate(connected()).pressure();
    }

    /** What a perfect gauge on the bottle would show once it is as warm as the room now is. */
    public GaugePressure bottleSettled() {
        return upToDate(connected()).settled();
    }

    /** Gas in the supplies and in the bottle that is connected [mol]. */
    public double contents_mol() {
        double all = supplies.values().stream()
                .mapToDouble(supply -> upToDate(supply).state().contents().moles())
                .sum();
        return bottle == null ? all : all + upToDate(bottle).state().contents().moles();
    }

    public void connect(CylinderTruth truth) {
        require(bottle == null && !transferOpen && open == null, "A bottle is connected with every valve shut.");
        bottle = cylinder(truth);
    }

    public void disconnect() {
        require(!bottleOpen && !transferOpen && open == null, "A bottle is taken off with every valve shut.");
        bottle = null;
    }

    public void openBottle() {
        require(!transferOpen, "The bottle's valve is opened with the transfer valve shut.");
        connected();
        bottleOpen = true;
    }

    public void shutBottle() {
        bottleOpen = false;
    }

    public void openSupply(String name) {
        require(
                open == null && !transferOpen,
                "One supply is open at a time, and opened with the transfer valve shut.");
        open = supply(name);
    }

    public void shutSupply() {
        open = null;
    }

    public void openTransfer() {
        transferOpen = true;
    }

    public void shutTransfer() {
        transferOpen = false;
    }

    /** Lets time pass with the valves as they are. */
    public void pass(Duration time) {
        passUntil(NO_STOP, time);
    }

    /**
     * Lets time pass until the bottle's true pressure has risen to {@code stop}, or {@code longest} has gone by.
     *
     * @return whether the bottle came to the stop
     */
    public boolean passUntil(GaugePressure stop, Duration longest) {
        Instant end = now.plus(longest);
        VirtualCylinder from = open;
        VirtualCylinder to = bottle;
        if (from == null || to == null || !valves().flowing()) {
            now = end;
            return false;
        }
        while (now.isBefore(end)) {
            if (upToDate(to).pressure().compareTo(stop) >= 0) {
                return true;
            }
            WarmEnding ending = flow(upToDate(from), to, stop, shorter(CREEP, Duration.between(now, end)));
            if (ending == WarmEnding.STOP) {
                return true;
            }
            if (ending != WarmEnding.TIME_UP) {
                now = now.plus(shorter(CREEP, Duration.between(now, end)));
            }
        }
        return upToDate(to).pressure().compareTo(stop) >= 0;
    }

    private WarmEnding flow(VirtualCylinder supply, VirtualCylinder filled, GaugePressure stop, Duration longest) {
        boolean back = supply.pressure().compareTo(filled.pressure()) < 0;
        VirtualCylinder source = back ? filled : supply;
        VirtualCylinder sink = back ? supply : filled;
        double longest_s = longest.toNanos() * 1e-9;
        WarmFill done = model.fill(new WarmStage(
                        new WarmSource.FromSupply(source.state()),
                        sink.state(),
                        new Opening.SteadyRise(rise, WIDEST),
                        Stop.at(back ? NO_STOP : stop),
                        supply.surroundings(now.plus(longest.dividedBy(2))),
                        new Sampling(longest_s, longest_s)))
                .orElseThrow();
        now = now.plusMillis(Math.round(done.seconds() * 1000.0));
        if (done.ending() != WarmEnding.NOTHING_MOVED) {
            source.become(((WarmSource.FromSupply) done.source()).state(), now);
            sink.become(done.bottle(), now);
        }
        return done.ending();
    }

    private VirtualCylinder upToDate(VirtualCylinder cylinder) {
        cylinder.restUntil(now);
        return cylinder;
    }

    private VirtualCylinder supply(String name) {
        VirtualCylinder supply = supplies.get(name);
        if (supply == null) {
            throw new NoSuchElementException("There is no supply " + name + " at this bench.");
        }
        return supply;
    }

    private VirtualCylinder connected() {
        VirtualCylinder here = bottle;
        if (here == null) {
            throw new IllegalStateException("No bottle is connected.");
        }
        return here;
    }

    private static Duration shorter(Duration a, Duration b) {
        return a.compareTo(b) < 0 ? a : b;
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalStateException(rule);
        }
    }
}
