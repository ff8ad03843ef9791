package org.lowfirst.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code lowfirst serve}. */
@Command(
        name = "serve",
        description =
                "Serves the pages on this computer and prints their address, until it is stopped with Ctrl+C. This is"
                        + " what lowfirst does on its own.")
final class ServeCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private final ServeOptions options = new ServeOptions();

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws InterruptedException {
        return ServedPages.untilStopped(options, terminal);
    }
}
