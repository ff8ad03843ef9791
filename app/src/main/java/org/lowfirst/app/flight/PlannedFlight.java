package org.lowfirst.app.flight;

import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.flight.FlightPlan;

/** A flight whose oxygen was worked out. */
public final class PlannedFlight implements FlightResult {

    private final FlightFile file;
    private final FlightPlan plan;
    private final List<GaugePressure> full;
    private final List<FileProblems> warnings;

    /** @param full what each bottle shows at today's temperature when it is full */
    PlannedFlight(FlightFile file, FlightPlan plan, List<GaugePressure> full, List<FileProblems> warnings) {
        this.file = file;
        this.plan = plan;
        this.full = List.copyOf(full);
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

    /** The rows of the table of legs. */
    List<LegRow> legs() {
        return LegRow.of(file.request().profile().legs(), plan.legs());
    }
}
