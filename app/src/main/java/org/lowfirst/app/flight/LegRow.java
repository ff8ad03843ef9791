package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.Leg;

/**
 * One leg with its use; legs of one name that follow each other are one.
 *
 * @param from_s start [s after the start of the flight]
 * @param to_s end [s]
 * @param from altitude at its start
 * @param to altitude at its end
 * @param litres free gas used
 */
record LegRow(String name, double from_s, double to_s, Altitude from, Altitude to, double litres) {

    /**
     * Joins legs and their uses.
     *
     * @param uses one for each row, as the plan has them
     */
    static List<LegRow> of(List<Leg> legs, List<FlightPlan.Use> uses) {
        List<LegRow> rows = new ArrayList<>();
        double start_s = 0.0;
        for (Leg leg : legs) {
            double stop_s = start_s + leg.duration().toNanos() / 1e9;
            LegRow last = rows.isEmpty() ? null : rows.get(rows.size() - 1);
            if (last != null && last.name.equals(leg.name())) {
                rows.set(rows.size() - 1, new LegRow(last.name, last.from_s, stop_s, last.from, leg.to(), last.litres));
            } else {
                double litres = uses.get(rows.size()).litres();
                rows.add(new LegRow(leg.name(), start_s, stop_s, leg.from(), leg.to(), litres));
            }
            start_s = stop_s;
        }
        return rows;
    }
}
