package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet for the bench. */
final class PlanSheetTest {

    @Test
    void stepsSayWhatToOpenAndWhereToStop() {
        CommandRun run = CommandRun.of("plan", "../examples/plan-eu.yaml");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).contains("""
                   Begin  All supplies and the transfer valve shut. Open the bottle valve.
                   [ ] 1  Open supply A slowly, then crack the transfer valve slowly.
                          Gauges meet at about 60 bar: shut transfer valve, then supply A.
                   [ ] 2  Open supply B slowly, then crack the transfer valve slowly.
                          Gauges meet at about 113 bar: shut transfer valve, then supply B.
                   [ ] 3  Open supply C slowly, then crack the transfer valve slowly.
                          Bottle at 150 bar: shut transfer valve, then supply C.
                """);
        assertThat(run.out()).contains("NEVER ABOVE 200 bar on its gauge");
        assertThat(run.out()).contains("7, and an 8th to about 147 bar");
        assertThat(run.out()).contains("No oil, grease or lotion near oxygen");
    }

    @Test
    void staircaseRisesToTheStop() {
        assertThat(CommandRun.of("plan", "../examples/plan-eu.yaml").out()).contains("""
                  bar                 0         50        100       150       200
                  bottle   40 ->  60  ████████▓▓▓▓                  │
                  1 A      62 ->  60  ████████████░                 │
                                                                    │
                  bottle   60 -> 113  ████████████▓▓▓▓▓▓▓▓▓▓▓       │
                  2 B     118 -> 113  ███████████████████████░      │
                                                                    │
                  bottle  113 -> 150  ███████████████████████▓▓▓▓▓▓▓│
                  3 C     190 -> 186  █████████████████████████████████████░
                  █ held  ▓ gained by the bottle  ░ given by the supply  │ stop 150
                """);
    }

    @Test
    void aBottleThatCannotReachIsSaidFirst() {
        CommandRun run = CommandRun.of("plan", "../examples/cannot-reach.yaml");
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).contains("CANNOT REACH 150 bar").contains("124 bar, 26 bar short of 150 bar");
        assertThat(run.out().indexOf("CANNOT REACH")).isLessThan(run.out().indexOf("Open supply"));
    }

    @Test
    void aColdBenchLowersTheStop() {
        CommandRun run = CommandRun.of("plan", "src/test/resources/plans/cold-bench.yaml");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out())
                .containsPattern("NEVER ABOVE 1,90[89] psi on its gauge \\(its marked 2,015 psi at 70 F\\)");
    }

    @Test
    void noValveIsOpenedForABottleThatIsFull() {
        CommandRun run = CommandRun.of("plan", "src/test/resources/plans/full-already.yaml");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.out()).contains("no valve is opened").doesNotContain("Open supply");
    }

    @Test
    void aBottleFullerThanEverySupplyGetsNothing() {
        CommandRun run = CommandRun.of("plan", "src/test/resources/plans/nothing-above-the-bottle.yaml");
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out())
                .contains("Supply A (100 psi) stays shut: not above the bottle.")
                .doesNotContain("Open supply");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../examples/plan-us.yaml",
                "../examples/plan-eu.yaml",
                "../examples/cannot-reach.yaml",
                "src/test/resources/plans/cold-bench.yaml",
                "src/test/resources/plans/nothing-above-the-bottle.yaml"
            })
    void everySheetFitsEightyColumns(String file) {
        assertThat(CommandRun.of("plan", file).out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void nothingIsCalledWithoutDanger() {
        String sheet = CommandRun.of("plan", "../examples/plan-us.yaml").out();
        assertThat(sheet).doesNotContainIgnoringCase("safe");
    }
}
