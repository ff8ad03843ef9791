package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the command line says about itself and about misuse. */
final class UsageTest {

    @Test
    void helpListsTheCommands() {
        CommandRun run = CommandRun.of("--help");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).contains("Usage: lowfirst").contains("\n  serve ", "\n  plan ", "\n  journal ");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void helpOfPlanTellsTheExitCodes() {
        CommandRun run = CommandRun.of("plan", "--help");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).contains("Exit codes: 0", "; 3 ", "; 2 ");
    }

    @Test
    void versionIsFilledInByTheBuild() {
        CommandRun run = CommandRun.of("--version");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).matches("lowfirst [0-9]+\\.[0-9]+\\.[0-9]+(-SNAPSHOT)? on Java [0-9].*\\R");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pln",
                "--plan",
                "plan",
                "plan a.yaml b.yaml",
                "plan --jsn a.yaml",
                "plan --json",
                "--port x",
                "serve --port 1 2",
                "journal",
                "journal veryfy"
            })
    void misuseEndsWithTwoAndSaysWhereToLook(String typed) {
        CommandRun run = CommandRun.of(typed.split(" "));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("lowfirst").contains("--help for what it takes.");
    }

    @Test
    void aMistypedCommandIsGuessed() {
        assertThat(CommandRun.of("pln").err()).contains("there is no command \"pln\"", "lowfirst plan");
    }
}
