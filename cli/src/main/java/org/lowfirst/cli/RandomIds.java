package org.lowfirst.cli;

import java.util.UUID;
import org.lowfirst.app.bench.IdSource;

/** Ids from the machine's source of randomness; the one place where they are made. */
final class RandomIds implements IdSource {

    @Override
    @SuppressWarnings("checkstyle:RegexpSinglelineJava")
    public String next() {
        return UUID.randomUUID().toString();
    }
}
