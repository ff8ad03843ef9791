package org.lowfirst.app.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The bytes of a file that somebody named, or why there are none. */
public sealed interface FileBytes {

    /** The file was read, at most one byte beyond the limit; its name is how problems name it. */
    final class Found implements FileBytes {
        private final String name;
        private final byte[] bytes;

        Found(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        public String name() {
            return name;
        }

        public byte[] bytes() {
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
     * @param most bytes such a file may have; one more is read, so that a longer one can be told
     */
    static FileBytes of(String file, InputStream in, int most) {
        try {
            if (file.equals("-")) {
                return new Found("standard input", in.readNBytes(most + 1));
            }
            Path path = Path.of(file);
            if (Files.isDirectory(path)) {
                return new Missing(file + ": error: this is a folder. Name a file in it.");
            }
            try (InputStream content = Files.newInputStream(path)) {
                return new Found(file, content.readNBytes(most + 1));
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
