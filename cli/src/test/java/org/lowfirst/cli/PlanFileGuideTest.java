package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What docs/plan-file.md shows is what the program takes and prints. */
final class PlanFileGuideTest {

    private static final Path EXAMPLE = Path.of("../examples/plan-eu.yaml");

    @Test
    void theGuideShowsTheExampleAndItsSheet() throws IOException {
        String guide = Files.readString(Path.of("../docs/plan-file.md"));
        assertThat(guide).contains("```yaml\n" + Files.readString(EXAMPLE) + "```");
        assertThat(guide)
                .contains("```\n" + CommandRun.of("plan", EXAMPLE.toString()).out() + "```");
    }
}
