package org.lowfirst.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code lowfirst} on its own: it serves. */
@Command(
        name = "lowfirst",
        description = {
            "Plans, guides and keeps the books of a small oxygen fill station.",
            "On its own it serves the pages on this computer and prints their address."
        },
        versionProvider = Version.class)
final class RootCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private final ServeOptions options = new ServeOptions();

    RootCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws InterruptedException {
        return ServedPages.untilStopped(options, terminal);
    }
}
