package org.lowfirst.app.flight;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.FileText;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.flight.FillingForAFlight;
import org.lowfirst.planning.flight.FlightOutcome;
import org.lowfirst.planning.flight.PlanningAFlight;

/** Works out the oxygen that a flight file asks about. */
public final class PlanningFromAFlightFile {

    private static final String SHAPE = "a flight file has one line for each person, leg and bottle";

    private final EquationOfState gas;

    /** @param gas the gas in every bottle */
    public PlanningFromAFlightFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads and works out one flight.
     *
     * @param name how problems name the file
     * @param bytes its content
     * @param folder where a track it names is looked for
     */
    public FlightResult plan(String name, byte[] bytes, Path folder) {
        Problems problems = new Problems();
        Optional<String> text = FileText.decode(bytes, FlightLimits.MOST_BYTES, SHAPE, problems);
        SourceText source = new SourceText(name, text.orElseGet(() -> new String(bytes, StandardCharsets.UTF_8)));
        if (text.isEmpty()) {
            return refused(source, problems, Optional.empty());
        }
        FlightFileReader.Result read = new FlightFileReader(folder, problems).read(source);
        if (read.file().isEmpty()) {
            return refused(source, problems, read.track());
        }
        FlightFile file = read.file().get();
        FlightOutcome outcome = PlanningAFlight.plan(file.request(), gas);
        if (outcome instanceof FlightOutcome.Planned planned) {
            List<FileProblems> warnings = List.of(new FileProblems(source, problems.inOrder()));
            List<GaugePressure> full = FullBottle.of(file, gas);
            List<GaugePressure> filled = FillingForAFlight.readings(file.request(), planned.plan(), gas, full)
                    .orElse(List.of());
            return new PlannedFlight(file, planned.plan(), full, filled, warnings);
        }
        FlightOutcome.Refused refused = (FlightOutcome.Refused) outcome;
        String sentence = FlightRefusalWords.of(refused, file.units());
        file.findPlace(refused.subject())
                .ifPresentOrElse(place -> problems.error(place, sentence), () -> problems.fileError(sentence));
        return refused(source, problems, Optional.empty());
    }

    private static RefusedFlight refused(SourceText source, Problems problems, Optional<TrackFile> track) {
        List<FileProblems> files = new ArrayList<>();
        files.add(new FileProblems(source, problems.inOrder()));
        track.map(TrackFile::fileProblems).ifPresent(files::add);
        return new RefusedFlight(files);
    }
}
