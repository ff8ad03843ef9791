package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person sees for each wrong flight file of src/test/resources/flight-problems, word for word, caret and all. */
final class FlightProblemsTest {

    private static final Path FOLDER = Path.of("src/test/resources/flight-problems");

    static List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyProblemIsShownInItsPlace(String file) throws IOException {
        CommandRun run = CommandRun.of("flight", FOLDER.resolve(file).toString(), "--json");
        String expected = Files.readString(FOLDER.resolve(file.replace(".yaml", ".txt")));
        assertThat("exit " + run.exit() + "\n" + run.err().replace(FOLDER + "/", ""))
                .isEqualTo(expected);
        assertThat(run.out()).isEmpty();
    }
}
