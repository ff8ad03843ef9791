package org.lowfirst.planning.warm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.warm.GasNow.TimedReading;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.FlowArea;
import org.lowfirst.transfer.warm.Opening;
import org.lowfirst.transfer.warm.Rest;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.Sampling;
import org.lowfirst.transfer.warm.Stop;
import org.lowfirst.transfer.warm.WarmFill;
import org.lowfirst.transfer.warm.WarmRefusal;
import org.lowfirst.transfer.warm.WarmSource;
import org.lowfirst.transfer.warm.WarmStage;
import org.lowfirst.transfer.warm.WarmState;
import org.lowfirst.transfer.warm.WarmVessel;

/**
 * Follows a bottle through its readings: between two readings the gauge rises steadily. The gas comes from a source at the bench's
 * temperature; what counts is its enthalpy, which the pressure of the source changes little.
 *
 * @param end the bottle at the last reading
 * @param lastRate how fast the gauge rose at the end; null when it stood still
 */
record FillingSoFar(WarmState end, @Nullable RiseRate lastRate) {

    private static final int MOST_READINGS = 10_000;
    /** Wide enough never to hold the rise back. */
    private static final FlowArea UNTHROTTLED = new FlowArea(1e-2);

    private static final double LONGEST_S = 7.0 * 86_400.0;
    private static final double STILL_PA = 1.0;
    /** A stop that only a density decides has no reading; a source beyond this is not followed [Pa]. */
    private static final double HIGHEST_SOURCE_PA = 3.9e7;
    /** The source is taken this much above the bottle [Pa]. */
    private static final double SOURCE_ABOVE_PA = 2e6;

    static Answer<FillingSoFar> follow(RatedBottle bottle, List<TimedReading> readings, WarmBench bench) {
        WarmRefusal wrong = wrong(readings);
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        WarmVessel vessel = new WarmVessel(bottle.waterVolume(), bottle.wall());
        WarmState state = WarmState.settled(vessel, readings.get(0).reading(), bench.surroundings(), bench.gas())
                .orElseThrow();
        Answer<FillingSoFar> soFar = Answer.of(new FillingSoFar(state, null));
        for (int i = 1; i < readings.size(); i++) {
            TimedReading from = readings.get(i - 1);
            TimedReading to = readings.get(i);
            soFar = soFar.then(before -> before.on(from, to, bench));
        }
        return soFar;
    }

    /** A settled bottle whose gauge will rise at a rate. */
    static Answer<FillingSoFar> opening(RatedBottle bottle, GasNow.Opening now, WarmBench bench) {
        WarmRefusal wrong = WarmCheck.reading("reading", now.reading());
        return wrong != null
                ? Answer.refused(wrong)
                : Answer.of(new FillingSoFar(
                        WarmState.settled(
                                        new WarmVessel(bottle.waterVolume(), bottle.wall()),
                                        now.reading(),
                                        bench.surroundings(),
                                        bench.gas())
                                .orElseThrow(),
                        now.rate()));
    }

    private Answer<FillingSoFar> on(TimedReading from, TimedReading to, WarmBench bench) {
        double seconds = to.seconds() - from.seconds();
        double rise_Pa = to.reading().pascals() - from.reading().pascals();
        if (rise_Pa < STILL_PA) {
            return bench.model()
                    .rest(Rest.lasting(end, bench.surroundings(), seconds, LONGEST_S))
                    .map(settling -> new FillingSoFar(settling.end(), null));
        }
        RiseRate rate = new RiseRate(rise_Pa / seconds);
        return rising(rate, Stop.at(to.reading()), new Sampling(LONGEST_S, LONGEST_S), bench)
                .map(fill -> new FillingSoFar(fill.bottle(), rate));
    }

    /** Goes on at the last rate to a stop; where the gauge stands still it stays as it is. */
    Answer<WarmState> onTo(Stop stop, WarmBench bench) {
        return lastRate == null
                ? Answer.of(end)
                : rising(lastRate, stop, new Sampling(LONGEST_S, LONGEST_S), bench)
                        .map(WarmFill::bottle);
    }

    private Answer<WarmFill> rising(RiseRate rate, Stop stop, Sampling sampling, WarmBench bench) {
        AbsolutePressure source = new AbsolutePressure(
                Math.min(stop.reading().pascals() + bench.ambient().pascals() + SOURCE_ABOVE_PA, HIGHEST_SOURCE_PA));
        return bench.model()
                .fill(new WarmStage(
                        new WarmSource.Constant(source, bench.temperature()),
                        Hose.NONE,
                        end,
                        new Opening.SteadyRise(rate, UNTHROTTLED),
                        stop,
                        bench.surroundings(),
                        sampling));
    }

    private static @Nullable WarmRefusal wrong(List<TimedReading> readings) {
        WarmRefusal wrong =
                WarmCheck.number("number of readings of the fill", readings.size(), 2, MOST_READINGS, "readings");
        for (int i = 0; i < readings.size() && wrong == null; i++) {
            TimedReading now = readings.get(i);
            wrong = WarmCheck.reading("reading " + (i + 1), now.reading());
            if (wrong == null && i > 0) {
                wrong = after(readings.get(i - 1), now, i + 1);
            }
        }
        return wrong;
    }

    private static @Nullable WarmRefusal after(TimedReading before, TimedReading now, int place) {
        if (!(now.seconds() > before.seconds()) || now.seconds() - before.seconds() > LONGEST_S) {
            return new WarmRefusal.TimeGoesBack(place, now.seconds(), before.seconds());
        }
        if (now.reading().compareTo(before.reading()) < 0) {
            return new WarmRefusal.SequenceFalls(place, now.reading(), before.reading());
        }
        return null;
    }

    /** What the gauge shows at the end. */
    GaugePressure reading(WarmBench bench) {
        return end.gauge(bench.surroundings(), bench.gas()).orElseThrow();
    }
}
