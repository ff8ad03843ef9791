package org.lowfirst.cli;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.FileBytes;
import org.lowfirst.app.gas.AnsweringAboutGas;
import org.lowfirst.app.gas.GasAnswer;
import org.lowfirst.app.gas.ReadingAnswer;
import org.lowfirst.app.gas.ReadingJson;
import org.lowfirst.app.gas.ReadingQuestion;
import org.lowfirst.app.gas.ReadingText;
import org.lowfirst.app.gas.RefusedQuestion;
import org.lowfirst.app.gas.SnapAnswer;
import org.lowfirst.app.gas.SnapJson;
import org.lowfirst.app.gas.SnapText;
import org.lowfirst.app.gas.StateTable;
import org.lowfirst.app.gas.TabulatingStates;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code lowfirst gas}. */
@Command(
        name = "gas",
        description = {
            "Answers questions about oxygen behind a gauge: what a reading becomes at other temperatures and how much"
                    + " gas it is; how hot gas gets behind a valve that is snapped open; a table of properties."
        },
        footer = {
            "",
            "Examples:",
            "  lowfirst gas --reading \"2015 psi\" --at \"70 F\" --reads-at \"20 F\"",
            "  lowfirst gas --reading \"166 bar\" --at \"18 C\" --volume \"2 L\" \\",
            "               --rated \"200 bar\" --rules eu",
            "  lowfirst gas --snap \"2200 psi\" --at \"20 C\"",
            "  lowfirst gas --states states.csv",
            "",
            "Exit codes: 0 answered; 2 the command line or the file is wrong; 1 anything else."
        })
final class GasCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(names = "--reading", paramLabel = "PRESSURE", description = "What the gauge shows, e.g. \"2015 psi\".")
    private @Nullable String reading;

    @Option(names = "--at", paramLabel = "TEMPERATURE", description = "Temperature of the gas, e.g. \"70 F\".")
    private @Nullable String at;

    @Option(
            names = "--reads-at",
            paramLabel = "TEMPERATURE",
            description = "Read the same gas at this temperature; may be given several times. Left out: a row of common"
                    + " ones.")
    private List<String> readsAt = List.of();

    @Option(
            names = "--volume",
            paramLabel = "VOLUME",
            description = "Water volume of the cylinder, e.g. \"2.9 L\": tells its contents.")
    private @Nullable String volume;

    @Option(
            names = "--rated",
            paramLabel = "PRESSURE",
            description = "Service pressure marked on it, e.g. \"2015 psi\": tells how full it is.")
    private @Nullable String rated;

    @Option(
            names = "--rules",
            paramLabel = "RULES",
            description = "us: the service pressure counts at 70 F, free gas at 70 F and 1 atm; eu: both at 15 C."
                    + " Left out: us.")
    private @Nullable String rules;

    @Option(
            names = "--snap",
            paramLabel = "PRESSURE",
            description = "Pressure of a supply whose valve is snapped open into a dead end at --at.")
    private @Nullable String snap;

    @Option(
            names = "--states",
            paramLabel = "FILE",
            description = "CSV with columns T_K and p_Pa (absolute): prints the properties of each row as CSV with all"
                    + " digits; - reads what is piped in.")
    private @Nullable String states;

    @Option(names = "--json", description = "Print one JSON object instead of text.")
    private boolean json;

    GasCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (Stream.of(reading, snap, states).filter(Objects::nonNull).count() != 1) {
            throw misuse("say what is asked with one of --reading, --snap and --states.");
        }
        if (states != null) {
            refuseBeside("--states", at != null || json || forAReading());
            return tabulate(states);
        }
        if (at == null) {
            throw misuse("the temperature of the gas is missing. Add --at, for example --at \"70 F\".");
        }
        AnsweringAboutGas answering = new AnsweringAboutGas(Oxygen.schmidtWagner());
        if (snap != null) {
            refuseBeside("--snap", forAReading());
            return print(answering.aboutSnapOpening(snap, at));
        }
        String typed = Objects.requireNonNull(reading);
        return print(answering.aboutReading(new ReadingQuestion(typed, at, readsAt, volume, rated, rules)));
    }

    private boolean forAReading() {
        return !readsAt.isEmpty() || volume != null || rated != null || rules != null;
    }

    private void refuseBeside(String option, boolean others) {
        if (others) {
            throw misuse(
                    option.equals("--snap")
                            ? "--snap takes --at and --json only; the other options belong to --reading."
                            : "--states takes no other option; it always prints CSV.");
        }
    }

    private ParameterException misuse(String sentence) {
        return new ParameterException(spec.commandLine(), sentence);
    }

    private int print(GasAnswer answer) {
        if (answer instanceof RefusedQuestion refused) {
            refused.objections().forEach(this::object);
            return ExitCode.BAD_INPUT;
        }
        if (answer instanceof ReadingAnswer found) {
            terminal.out().print(json ? ReadingJson.of(found) : ReadingText.of(found));
        } else {
            SnapAnswer found = (SnapAnswer) answer;
            terminal.out().print(json ? SnapJson.of(found) : SnapText.of(found));
        }
        return ExitCode.DONE;
    }

    private void object(RefusedQuestion.Objection objection) {
        String where = objection.option().isEmpty() ? "" : objection.option() + ": ";
        terminal.err().println(spec.qualifiedName() + ": " + where + objection.sentence());
    }

    private int tabulate(String file) {
        FileBytes read = FileBytes.of(file, terminal.in(), TabulatingStates.MOST_BYTES);
        if (read instanceof FileBytes.Missing missing) {
            terminal.err().println(missing.why());
            return ExitCode.BAD_INPUT;
        }
        FileBytes.Found found = (FileBytes.Found) read;
        StateTable table = new TabulatingStates(Oxygen.schmidtWagner(), Oxygen.lemmonJacobsen())
                .tabulate(found.name(), found.bytes());
        if (table instanceof StateTable.Refused refused) {
            new ProblemPrinter(terminal).print(refused.source(), refused.problems(), "nothing was tabulated");
            return ExitCode.BAD_INPUT;
        }
        terminal.out().print(((StateTable.Tabulated) table).csv());
        return ExitCode.DONE;
    }
}
