package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever goes wrong unforeseen: one sentence, the details in a file, exit code 1. */
final class UnexpectedFailureTest {

    @TempDir
    Path folder;

    @Test
    void detailsGoToAFileThatIsNamed() throws IOException {
        StringWriter err = new StringWriter();
        assertThat(planFrom(broken(), err, folder)).isEqualTo(1);
        assertThat(err.toString().lines()).hasSize(2);
        assertThat(err.toString()).startsWith("lowfirst: something unexpected happened: the pipe burst");
        try (var files = Files.list(folder)) {
            Path details = files.findFirst().orElseThrow();
            assertThat(err.toString()).contains(details.toString());
            assertThat(Files.readString(details)).contains("the pipe burst").contains("\tat ");
        }
    }

    @Test
    void detailsAreShownWhenTheyCannotBeWritten() {
        StringWriter err = new StringWriter();
        assertThat(planFrom(broken(), err, folder.resolve("missing"))).isEqualTo(1);
        assertThat(err.toString()).contains("the pipe burst").contains("so they are above");
    }

    private static int planFrom(InputStream in, StringWriter err, Path details) {
        PrintWriter out = new PrintWriter(new StringWriter());
        return new Lowfirst(new Terminal(in, out, new PrintWriter(err), true, details)).run("plan", "-");
    }

    private static InputStream broken() {
        return new InputStream() {
            @Override
            public int read() {
                throw new IllegalStateException("the pipe burst");
            }

            @Override
            public int read(byte[] bytes, int from, int length) {
                return read();
            }
        };
    }
}
