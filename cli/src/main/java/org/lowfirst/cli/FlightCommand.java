package org.lowfirst.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.lowfirst.app.file.FileBytes;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.flight.FileProblems;
import org.lowfirst.app.flight.FlightJson;
import org.lowfirst.app.flight.FlightLimits;
import org.lowfirst.app.flight.FlightResult;
import org.lowfirst.app.flight.FlightSheet;
import org.lowfirst.app.flight.PlannedFlight;
import org.lowfirst.app.flight.PlanningFromAFlightFile;
import org.lowfirst.app.flight.RefusedFlight;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst flight FILE}. */
@Command(
        name = "flight",
        description =
                "Works out the oxygen of a flight: litres by leg and person, whether the bottles on board cover it with"
                        + " margin and reserve, what they must read, how long they last, and what the rule texts ask.",
        footer = {
            "",
            "Exit codes: 0 the bottles cover flight, margin and reserve; 3 they do not, and the sheet says by how much; 2"
                    + " a file or the command line is wrong; 1 anything else.",
            "examples/flight-wave.yaml shows a flight file, examples/flight-track.yaml one with a track."
        })
final class FlightCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Flight file in YAML; - reads what is piped in.")
    private String file = "";

    @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
    private boolean json;

    FlightCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        FileBytes read = FileBytes.of(file, terminal.in(), FlightLimits.MOST_BYTES);
        if (read instanceof FileBytes.Missing missing) {
            terminal.err().println(missing.why());
            return ExitCode.BAD_INPUT;
        }
        FileBytes.Found found = (FileBytes.Found) read;
        FlightResult result =
                new PlanningFromAFlightFile(Oxygen.schmidtWagner()).plan(found.name(), found.bytes(), folder());
        if (result instanceof RefusedFlight refused) {
            return refuse(refused.files());
        }
        PlannedFlight flight = (PlannedFlight) result;
        ProblemPrinter printer = new ProblemPrinter(terminal);
        flight.warnings().forEach(warned -> printer.show(warned.source(), warned.problems()));
        terminal.out().print(json ? FlightJson.of(flight) : FlightSheet.of(flight));
        return flight.covered() ? ExitCode.DONE : ExitCode.NOT_COVERED;
    }

    /** Where a track is looked for: beside the flight file. */
    private Path folder() {
        Path beside = file.equals("-") ? null : Path.of(file).getParent();
        return beside == null ? Path.of("") : beside;
    }

    private int refuse(List<FileProblems> files) {
        ProblemPrinter printer = new ProblemPrinter(terminal);
        files.forEach(wrong -> printer.show(wrong.source(), wrong.problems()));
        List<Problem> all =
                files.stream().flatMap(wrong -> wrong.problems().stream()).toList();
        printer.count(all, "nothing was worked out");
        return ExitCode.BAD_INPUT;
    }
}
