package org.lowfirst.app.flight;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.Leg;

/** A track as legs. They carry the name of their half hour or hour, so that the use of each is told. */
final class TrackLegs {

    private static final double HALF_HOUR_S = 1800.0;
    private static final double HOUR_S = 3600.0;
    private static final double SHORT_FLIGHT_S = 3.0 * HOUR_S;

    private TrackLegs() {}

    static List<Leg> of(List<Fix> fixes) {
        double start_s = fixes.get(0).seconds();
        double end_s = fixes.get(fixes.size() - 1).seconds() - start_s;
        double block_s = end_s <= SHORT_FLIGHT_S ? HALF_HOUR_S : HOUR_S;
        List<Leg> legs = new ArrayList<>();
        for (int i = 1; i < fixes.size(); i++) {
            Fix from = fixes.get(i - 1);
            Fix to = fixes.get(i);
            double at_s = from.seconds() - start_s;
            double stop_s = to.seconds() - start_s;
            while (at_s < stop_s) {
                double block = Math.floor(at_s / block_s + 1e-9);
                double next_s = Math.min(stop_s, (block + 1.0) * block_s);
                legs.add(new Leg(
                        HoursAndMinutes.near(block * block_s) + " to "
                                + HoursAndMinutes.after(Math.min(end_s, (block + 1.0) * block_s)),
                        nanos(next_s).minus(nanos(at_s)),
                        altitude(from, to, at_s + start_s),
                        altitude(from, to, next_s + start_s)));
                at_s = next_s;
            }
        }
        return legs;
    }

    private static Duration nanos(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }

    private static Altitude altitude(Fix from, Fix to, double at_s) {
        double share = (at_s - from.seconds()) / (to.seconds() - from.seconds());
        return new Altitude(from.metres() + share * (to.metres() - from.metres()));
    }
}
