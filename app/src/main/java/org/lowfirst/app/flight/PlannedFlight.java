package org.lowfirst.app.flight;

import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.flight.FillingForAFlight;
import org.lowfirst.planning.flight.FlightPlan;

/** A flight whose oxygen was worked out. */
public final class PlannedFlight implements FlightResult {

    private final FlightFile file;
    private final FlightPlan plan;
    private final List<GaugePressure> full;
    private final List<GaugePressure> filled;
    private final List<FileProblems> warnings;

    /**
     * @param full what each bottle shows at today's temperature when it is full
     * @param filled what each must show so that the flight is covered, see {@link FillingForAFlight}; empty when full ones do not
     *     cover it
     */
    PlannedFlight(
            FlightFile file,
            FlightPlan plan,
            List<GaugePressure> full,
            List<GaugePressure> filled,
            List<FileProblems> warnings) {
        this.file = file;
        this.plan = plan;
        this.full = List.copyOf(full);
        this.filled = List.copyOf(filled);
        this.warnings = List.copyOf(warnings);
    }

    /** Whether the bottles hold what flight, margin and reserve need. */
    public boolean covered() {
        return plan.covered();
    }

    /** What a person should know about the files. */
    public List<FileProblems> warnings() {
        return warnings;
    }

    FlightFile file() {
        return file;
    }

    FlightPlan plan() {
        return plan;
    }

    List<GaugePressure> full() {
        return full;
    }

    /** The least common reading that covers the flight, when full bottles can show it at today's temperature. */
    Optional<GaugePressure> readingNeeded() {
        return plan.pressureNeeded()
                .map(FlightPlan.Pressure::reading)
                .filter(reading -> full.stream().allMatch(most -> reading.compareTo(most) <= 0));
    }

    /** Whether bottles can be filled so that the flight is covered. */
    boolean canBeCovered() {
        return !filled.isEmpty();
    }

    /** To which reading a bottle is to be filled; empty when it can stay as it is, or when filling does not do it. */
    Optional<GaugePressure> fillTo(int bottle) {
        GaugePressure reading = file.request().bottles().get(bottle).reading();
        return filled.isEmpty()
                ? Optional.empty()
                : Optional.of(filled.get(bottle)).filter(wanted -> wanted.compareTo(reading) > 0);
    }

    /** The rows of the table of legs. */
    List<LegRow> legs() {
        return LegRow.of(file.request().profile().legs(), plan.legs());
    }
}
