package org.lowfirst.app.honest;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.Happening.Loosened;
import org.lowfirst.app.honest.Happening.Moved;
import org.lowfirst.app.honest.Happening.Read;
import org.lowfirst.app.honest.Happening.Shown;
import org.lowfirst.app.honest.Happening.Unsaid;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.BenchFact;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.BenchFact.StageMade;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.ContentsEstimate;
import org.lowfirst.planning.contents.GasTemperature;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeReading;
import org.lowfirst.planning.contents.MeteredCylinder;
import org.lowfirst.planning.contents.ReadingCheck;
import org.lowfirst.planning.contents.ReadingOutcome;
import org.lowfirst.planning.contents.Surroundings;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SupplyId;

/**
 * Writes happenings as facts for the reconciliation: how warm the gas was, and whether a cylinder stayed shut. Used once.
 *
 * <p>Gas that streamed into a bottle is warm for a while. How warm depends on how fast it came, which the journal does not say
 * unless somebody did: without that the next settled reading starts the bottle anew.
 */
final class FactWriter {

    /** Beyond so many times what both gauges may err nobody takes two readings for one pressure. */
    private static final double STILL_ONE_PRESSURE = 3.0;

    private final JournalAssumptions granted = JournalAssumptions.STANDARD;
    private final ContentsAssumptions assumptions;
    private final Map<String, Gauge> gauges;
    private final Map<String, MeteredCylinder> cylinders;
    private final ReadingCheck check;
    private final Map<CylinderId, Instant> flowed = new HashMap<>();
    private final Map<CylinderId, Instant> lookedAt = new HashMap<>();
    private final Map<CylinderId, GaugeReading> latest = new HashMap<>();
    private final Set<CylinderId> loosened = new HashSet<>();
    private final List<BenchFact> facts = new ArrayList<>();
    private final List<Noted> noted = new ArrayList<>();

    FactWriter(
            ContentsAssumptions assumptions,
            Map<String, Gauge> gauges,
            Map<String, MeteredCylinder> cylinders,
            Surroundings surroundings) {
        this.assumptions = assumptions;
        this.gauges = gauges;
        this.cylinders = cylinders;
        this.check = new ReadingCheck(surroundings, assumptions);
    }

    /** Every reading and every draw in order, for comparing what left with what entered. */
    List<Noted> noted() {
        return noted;
    }

    List<BenchFact> write(List<Happening> happenings) {
        for (Happening happening : happenings) {
            if (happening instanceof Read read) {
                read(read);
            } else if (happening instanceof Moved moved) {
                moved(moved);
            } else if (happening instanceof Unsaid unsaid) {
                unsaid(unsaid);
            } else if (happening instanceof Loosened lost) {
                loosened.add(lost.cylinder());
            } else {
                throw new AssertionError("unhandled " + happening);
            }
        }
        return facts;
    }

    private void read(Read read) {
        CylinderId cylinder = read.cylinder();
        GaugeReading reading = reading(read.at(), cylinder, read.shown(), temperature(read));
        noted.add(new Noted(read.at(), cylinder, read.fill(), reading));
        GaugeReading before = latest.get(cylinder);
        if (before != null && (repeats(before, reading) || knownBetter(before, reading))) {
            return;
        }
        boolean shut = !loosened.remove(cylinder) && before != null && stayedShut(read, before, reading);
        add(new ReadingTaken(reading, shut ? Since.KEPT_SHUT : Since.MAYBE_USED), cylinder, reading);
        if (read.since() != Happening.Since.ANEW) {
            lookedAt.put(cylinder, read.at());
        } else {
            lookedAt.remove(cylinder);
        }
    }

    private void add(BenchFact fact, CylinderId cylinder, GaugeReading reading) {
        facts.add(fact);
        latest.put(cylinder, reading);
    }

    /** The last stage and the end of the fill are often one look at one gauge. */
    private static boolean repeats(GaugeReading before, GaugeReading reading) {
        return before.gauge().equals(reading.gauge())
                && before.shown().equals(reading.shown())
                && before.temperature().known() == reading.temperature().known()
                && Duration.between(before.at(), reading.at()).compareTo(Duration.ofMinutes(2)) <= 0;
    }

    /** Of gas that is still warm nothing better is known than what somebody said before. */
    private static boolean knownBetter(GaugeReading before, GaugeReading reading) {
        return before.temperature().known() == GasTemperature.Known.WARM_MODELLED
                && reading.temperature().known() == GasTemperature.Known.WARM_UNKNOWN;
    }

    private boolean stayedShut(Read read, GaugeReading before, GaugeReading now) {
        if (read.since() == Happening.Since.ANEW) {
            return false;
        }
        boolean guessed = before.temperature().known() == GasTemperature.Known.WARM_UNKNOWN;
        if (guessed && now.temperature().known() != GasTemperature.Known.WARM_UNKNOWN) {
            return false;
        }
        if (read.since() == Happening.Since.AT_BENCH) {
            return true;
        }
        Instant last = later(flowed.get(read.cylinder()), lookedAt.get(read.cylinder()));
        return last != null && within(last, read.at(), granted.keptShut());
    }

    private static @Nullable Instant later(@Nullable Instant a, @Nullable Instant b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return a.isAfter(b) ? a : b;
    }

    private static boolean within(Instant from, Instant to, Duration duration) {
        return Duration.between(from, to).compareTo(duration) <= 0;
    }

    private GasTemperature temperature(Read read) {
        Reading reading = read.shown().reading();
        Temperature bench = reading.temperature().temperature();
        Temperature gas = read.gas();
        if (gas != null) {
            return GasTemperature.warmModelled(gas, assumptions);
        }
        Instant flow = flowed.get(read.cylinder());
        if (flow != null) {
            boolean supply = read.cylinder() instanceof SupplyId;
            if (within(flow, read.at(), supply ? granted.drawn() : granted.warm())) {
                return supply
                        ? GasTemperature.drawn(bench, assumptions)
                        : GasTemperature.warmUnknown(bench, assumptions);
            }
        }
        return reading.temperatureAssumed()
                ? GasTemperature.assumed(bench, assumptions)
                : GasTemperature.measured(bench, assumptions);
    }

    private void moved(Moved moved) {
        Shown bottle = moved.bottleAfter();
        Shown supply = moved.supplyAfter();
        Temperature bench = bottle.reading().temperature().temperature();
        GaugeReading bottleAfter =
                reading(moved.at(), moved.bottle(), bottle, GasTemperature.warmUnknown(bench, assumptions));
        GaugeReading supplyAfter = supply == null
                ? null
                : reading(
                        moved.at(),
                        moved.supply(),
                        supply,
                        GasTemperature.drawn(supply.reading().temperature().temperature(), assumptions));
        add(
                new StageMade(
                        moved.at(),
                        name(moved.supply()),
                        name(moved.bottle()),
                        supplyAfter != null && equal(moved, bottleAfter, supplyAfter),
                        null,
                        supplyAfter,
                        bottleAfter),
                moved.bottle(),
                bottleAfter);
        noted.add(new Noted(moved.at(), moved.supply(), moved.fill(), null));
        noted.add(new Noted(moved.at(), moved.bottle(), moved.fill(), bottleAfter));
        if (supplyAfter != null) {
            noted.add(new Noted(moved.at(), moved.supply(), moved.fill(), supplyAfter));
            latest.put(moved.supply(), supplyAfter);
        }
        flowed.put(moved.bottle(), moved.at());
        flowed.put(moved.supply(), moved.at());
    }

    /** The journal does not say whether a stage ran until equal: it did when it ended below the target, about equal. */
    private boolean equal(Moved moved, GaugeReading bottle, GaugeReading supply) {
        Gauge bottleGauge = gauges.get(bottle.gauge());
        Gauge supplyGauge = gauges.get(supply.gauge());
        GaugePressure target = moved.target();
        if (target == null || bottleGauge == null || supplyGauge == null) {
            return false;
        }
        double limits_Pa = bottleGauge.limit().pascals() + supplyGauge.limit().pascals();
        double apart_Pa = Math.abs(supply.shown().pascals() - bottle.shown().pascals());
        double short_Pa = target.pascals() - bottle.shown().pascals();
        return short_Pa > bottleGauge.limit().pascals() && apart_Pa <= STILL_ONE_PRESSURE * limits_Pa;
    }

    /** Each supply of the bank may have given anything from nothing to all of it. */
    private void unsaid(Unsaid unsaid) {
        BottleId bottle = unsaid.bottle();
        ContentsEstimate moved = share(unsaid);
        for (SupplyId supply : unsaid.bank()) {
            facts.add(new StageMade(unsaid.at(), name(supply), name(bottle), false, moved, null, null));
            noted.add(new Noted(unsaid.at(), supply, unsaid.fill(), null));
            flowed.put(supply, unsaid.at());
        }
        flowed.put(bottle, unsaid.at());
    }

    /** Null when the bottle's readings say nothing of how much it got. */
    private @Nullable ContentsEstimate share(Unsaid unsaid) {
        Double before_mol = amount(unsaid, unsaid.before(), false);
        Double after_mol = amount(unsaid, unsaid.after(), true);
        if (before_mol == null || after_mol == null || unsaid.bank().isEmpty()) {
            return null;
        }
        double entered_mol = Math.max(0.0, after_mol - before_mol);
        return new ContentsEstimate(entered_mol / unsaid.bank().size(), 0.5 * entered_mol);
    }

    private @Nullable Double amount(Unsaid unsaid, Shown shown, boolean warm) {
        Temperature bench = shown.reading().temperature().temperature();
        GasTemperature gas =
                warm ? GasTemperature.warmUnknown(bench, assumptions) : GasTemperature.measured(bench, assumptions);
        GaugeReading reading = reading(unsaid.at(), unsaid.bottle(), shown, gas);
        MeteredCylinder cylinder = cylinders.get(reading.cylinder());
        Gauge gauge = gauges.get(reading.gauge());
        if (cylinder == null || gauge == null) {
            return null;
        }
        return check.check(reading, cylinder, gauge) instanceof ReadingOutcome.Accepted accepted
                ? accepted.measurement().amount_mol()
                : null;
    }

    private static GaugeReading reading(Instant at, CylinderId cylinder, Shown shown, GasTemperature temperature) {
        return new GaugeReading(
                at, name(cylinder), shown.gauge(), shown.reading().pressure().gauge(), temperature);
    }

    /**
     * A reading, or a draw from a supply that was not read.
     *
     * @param fill the fill it belongs to; null when none
     * @param reading null for a draw
     */
    record Noted(
            Instant at,
            CylinderId cylinder,
            @Nullable FillId fill,
            @Nullable GaugeReading reading) {}

    /** A name no two cylinders share. */
    static String name(CylinderId cylinder) {
        return (cylinder instanceof SupplyId ? "supply " : "bottle ") + cylinder.value();
    }
}
