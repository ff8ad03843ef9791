package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** An invented bench played through served pages. */
final class DemoCommandTest {

    @Test
    void everyStepIsToldAndTheTruthInTheEnd() {
        CommandRun run = CommandRun.of("demo", "--live", "--fills", "2", "--pace", "0", "--seed", "7");
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out())
                .contains("An invented bench is at http://127.0.0.1:")
                .contains("A bottle comes: M-01 reads", "A bottle comes: M-02 reads")
                .containsPattern("\\d\\d:\\d\\d  The page says: Open supply A, slowly\\.")
                .containsPattern("Bottle gauge \\d+ bar, supply A \\d+ bar\\. Both are entered\\.")
                .contains("What nobody at the bench could know")
                .containsPattern("Supply C: truly \\d+\\.\\d bar; the bench says \\d+\\.\\d bar, within")
                .contains("It loses 1.0 % of its contents a day.")
                .containsPattern("M-02: wanted 150 bar, taken off at \\d+ bar; settled it truly has \\d+\\.\\d bar\\.");
        assertThat(Path.of(folder(run))).doesNotExist();
    }

    @Test
    void theSameSeedPlaysTheSame() {
        String[] typed = {"demo", "--live", "--fills", "1", "--pace", "0", "--seed", "3"};
        assertThat(played(CommandRun.of(typed))).isEqualTo(played(CommandRun.of(typed)));
    }

    /** What was played, without the port and the time of day it began at. */
    private static String played(CommandRun run) {
        return run.out().replaceAll("(?m)^.*http.*$|^Its journal.*$|\\d\\d:\\d\\d|\\d{4}-\\d\\d-\\d\\d", "");
    }

    @Test
    void whatCannotBePlayedIsRefused() {
        assertThat(CommandRun.of("demo").err()).contains("Maybe say --live.");
        CommandRun none = CommandRun.of("demo", "--live", "--fills", "0");
        assertThat(none.exit()).isEqualTo(2);
        assertThat(none.err()).contains("the number of fills (0) must be 1 to 200");
    }

    /** The folder of the journal, as told. */
    private static String folder(CommandRun run) {
        return run.out()
                .lines()
                .filter(line -> line.startsWith("Its journal is in "))
                .map(line -> line.replaceFirst("Its journal is in (.*) until it is stopped\\.", "$1"))
                .findFirst()
                .orElseThrow();
    }
}
