package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a person sees for each wrong file of src/test/resources/question-problems, word for word, caret and all. The name of a file
 * begins with its command.
 */
final class QuestionProblemsTest {

    private static final Path FOLDER = Path.of("src/test/resources/question-problems");

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
        String command = file.substring(0, file.indexOf('-'));
        CommandRun run = CommandRun.of(command, FOLDER.resolve(file).toString(), "--json");
        String expected = Files.readString(FOLDER.resolve(file.replace(".yaml", ".txt")));
        assertThat("exit " + run.exit() + "\n" + run.err().replace(FOLDER + "/", ""))
                .isEqualTo(expected);
        assertThat(run.out()).isEmpty();
    }
}
