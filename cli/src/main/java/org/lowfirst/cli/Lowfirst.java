package org.lowfirst.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The commands of {@code lowfirst}. */
final class Lowfirst {

    private static final OptionSpec HELP = OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Show this help and end.")
            .build();
    private static final OptionSpec VERSION = OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .description("Show the version and end.")
            .build();

    private final Terminal terminal;

    Lowfirst(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * Runs one command.
     *
     * @param args what was typed after {@code lowfirst}
     * @return the exit code, see {@link ExitCode}
     */
    int run(String... args) {
        CommandLine line = new CommandLine(new RootCommand(terminal));
        addCommands(line, args.length == 0 ? "" : args[0]);
        line.getCommandSpec().addOption(VERSION);
        addHelp(line);
        line.setOut(terminal.out());
        line.setErr(terminal.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(80);
        line.setParameterExceptionHandler(this::misuse);
        line.setExecutionExceptionHandler(new UnexpectedFailure(terminal));
        return line.execute(args);
    }

    /** Adds the command that was asked for, or all when it is none of them: reading what each can take costs time. */
    private void addCommands(CommandLine line, String asked) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("serve", () -> new ServeCommand(terminal));
        commands.put("plan", () -> new PlanCommand(terminal));
        commands.put("session", () -> new SessionCommand(terminal));
        commands.put("ahead", () -> new AheadCommand(terminal));
        commands.put("exchange", () -> new ExchangeCommand(terminal));
        commands.put("study", () -> new StudyCommand(terminal));
        commands.put("camp", () -> new CampCommand(terminal));
        commands.put("gas", () -> new GasCommand(terminal));
        commands.put("flight", () -> new FlightCommand(terminal));
        commands.put("demo", () -> new DemoCommand(terminal));
        commands.put("journal", this::journal);
        commands.forEach((name, command) -> {
            if (name.equals(asked) || !commands.containsKey(asked)) {
                line.addSubcommand(name, command.get());
            }
        });
    }

    private CommandLine journal() {
        return new CommandLine(new JournalCommand())
                .addSubcommand(new VerifyCommand(terminal))
                .addSubcommand(new ExportCommand(terminal))
                .addSubcommand(new ImportCommand(terminal));
    }

    private static void addHelp(CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        spec.addOption(HELP);
        if (spec.positionalParameters().isEmpty()) {
            spec.usageMessage().optionListHeading("%n");
        } else {
            spec.usageMessage().parameterListHeading("%n");
        }
        spec.usageMessage().commandListHeading("%nCommands:%n");
        line.getSubcommands().values().forEach(Lowfirst::addHelp);
    }

    private int misuse(ParameterException wrong, String[] args) {
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        boolean root = wrong.getCommandLine().getParent() == null;
        if (root && wrong instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
            terminal.err()
                    .println(command + ": there is no command \""
                            + unmatched.getUnmatched().get(0) + "\".");
        } else {
            terminal.err().println(command + ": " + wrong.getMessage());
        }
        UnmatchedArgumentException.printSuggestions(wrong, terminal.err());
        terminal.err().println("Type " + command + " --help for what it takes.");
        return ExitCode.BAD_INPUT;
    }
}
