package org.lowfirst.cli;

import picocli.CommandLine.Command;

/** {@code lowfirst} on its own. */
@Command(
        name = "lowfirst",
        description = "Plans, guides and keeps the books of a small oxygen fill station.",
        versionProvider = Version.class)
final class RootCommand {}
