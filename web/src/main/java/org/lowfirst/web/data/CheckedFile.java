package org.lowfirst.web.data;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The file that was checked last, kept in memory until it is taken or another is checked. Thread-safe. */
final class CheckedFile {

    private @Nullable String key;
    private byte[] bytes = new byte[0];

    /** @param under name to take it by */
    synchronized void keep(String under, byte[] file) {
        key = under;
        bytes = file.clone();
    }

    /** The file, once; nothing when another was checked since, or the program was started anew. */
    synchronized Optional<byte[]> take(String under) {
        if (!under.equals(key)) {
            return Optional.empty();
        }
        byte[] kept = bytes;
        key = null;
        bytes = new byte[0];
        return Optional.of(kept);
    }
}
