package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * {@code lowfirst gas --states} against a table from another program.
 *
 * <p>Source: Schmidt and Wagner 1985, Lemmon and Jacobsen 2004, evaluated by an open general-purpose library; see the head of
 * the table. Tolerance 1e-6 of the value, transport 1e-4: what people who check property code ask for.
 */
final class GasStatesReferenceTest {

    private static final Path TABLE = Path.of("src/test/resources/reference/states-oxygen-SchmidtWagner1985.csv");
    private static final int FIRST_TRANSPORT_COLUMN = 10;

    @Test
    void everyColumnOfEveryRowIsMatched() throws IOException {
        CommandRun run = CommandRun.of("gas", "--states", TABLE.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        List<String> expected = Files.readAllLines(TABLE).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
        List<String> found = run.out().lines().toList();
        assertThat(found).hasSameSizeAs(expected).hasSizeGreaterThan(60);
        assertThat(found.get(0)).isEqualTo(expected.get(0));
        for (int row = 1; row < expected.size(); row++) {
            String[] theirs = expected.get(row).split(",");
            String[] ours = found.get(row).split(",");
            assertThat(ours).hasSameSizeAs(theirs);
            for (int column = 0; column < theirs.length; column++) {
                double value = Double.parseDouble(theirs[column]);
                double share = column < FIRST_TRANSPORT_COLUMN ? 1e-6 : 1e-4;
                assertThat(Double.parseDouble(ours[column]))
                        .as("row %d, column %d", row, column)
                        .isCloseTo(value, within(share * Math.abs(value)));
            }
        }
    }
}
