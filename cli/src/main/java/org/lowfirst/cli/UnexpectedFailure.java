package org.lowfirst.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** The one handler at the edge: a sentence for the person, the details into a file. */
final class UnexpectedFailure implements IExecutionExceptionHandler {

    private final Terminal terminal;

    UnexpectedFailure(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        String what = failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
        terminal.err().println("lowfirst: something unexpected happened: " + what.strip());
        terminal.err().println(whereTheDetailsAre(failure));
        return ExitCode.FAILED;
    }

    private String whereTheDetailsAre(Exception failure) {
        try {
            Path file = Files.createTempFile(terminal.details(), "lowfirst-", ".txt");
            try (PrintWriter details = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
                failure.printStackTrace(details);
            }
            return "The details are in " + file + ".";
        } catch (IOException full) {
            failure.printStackTrace(terminal.err());
            return "The details could not be written to " + terminal.details() + ", so they are above.";
        }
    }
}
