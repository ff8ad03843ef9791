package org.lowfirst.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.lowfirst.app.plan.PlanFileLimits;

/** The bytes of a file that was named on the command line, or why there are none. */
sealed interface FileBytes {

    /** The file was read, at most one byte beyond the limit; its name is how problems name it. */
    final class Found implements FileBytes {
        private final String name;
        private final byte[] bytes;

        Found(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        String name() {
            return name;
        }

        byte[] bytes() {
            return bytes;
        }
    }

    /** @param why one sentence with the file's name */
    record Missing(String why) implements FileBytes {}

    /**
     * Reads a file.
     *
     * @param file the file as typed; - for what is piped in
     * @param in what is piped in
     */
    static FileBytes of(String file, InputStream in) {
        try {
            if (file.equals("-")) {
                return new Found("standard input", in.readNBytes(PlanFileLimits.MOST_BYTES + 1));
            }
            Path path = Path.of(file);
            if (Files.isDirectory(path)) {
                return new Missing(file + ": error: this is a folder. Name a plan file in it.");
            }
            try (InputStream content = Files.newInputStream(path)) {
                return new Found(file, content.readNBytes(PlanFileLimits.MOST_BYTES + 1));
            }
        } catch (NoSuchFileException missing) {
            return new Missing(file + ": error: there is no such file. Check its name and folder.");
        } catch (AccessDeniedException denied) {
            return new Missing(file + ": error: this file may not be read. Check its permissions.");
        } catch (InvalidPathException odd) {
            return new Missing(file + ": error: this is not a file name (" + odd.getReason() + ").");
        } catch (IOException broken) {
            return new Missing(file + ": error: this file cannot be read (" + broken.getMessage() + ").");
        }
    }
}
