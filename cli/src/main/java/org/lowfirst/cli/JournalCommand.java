package org.lowfirst.cli;

import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code lowfirst journal}: on its own it only says what can be done with a journal. */
@Command(name = "journal", description = "Verifies, exports or imports the journal.")
final class JournalCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        CommandSpec asked = Objects.requireNonNull(spec, "set before a command runs");
        throw new ParameterException(
                asked.commandLine(),
                "say what to do: " + String.join(", ", asked.subcommands().keySet()));
    }
}
