package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person sees for each wrong file of src/test/resources/problems, word for word, caret and all. */
final class PlanProblemsTest {

    private static final Path FOLDER = Path.of("src/test/resources/problems");

    static Stream<String> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all
                    .map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyProblemIsShownInItsPlace(String file) throws IOException {
        byte[] bytes = Files.readAllBytes(FOLDER.resolve(file));
        CommandRun run = CommandRun.piped(bytes, "plan", "-", "--json");
        String expected = Files.readString(FOLDER.resolve(file.replace(".yaml", ".txt")));
        assertThat("exit " + run.exit() + "\n" + run.err()).isEqualTo(expected);
        assertThat(run.out().isEmpty()).isEqualTo(run.exit() == ExitCode.BAD_INPUT);
    }
}
