package org.lowfirst.app.virtual;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Where the play of a virtual bench is told.
 *
 * @param line takes one line
 * @param pause waits as long as people need to read it
 * @param stopped whether somebody stopped it
 */
public record LiveTelling(Consumer<String> line, Runnable pause, BooleanSupplier stopped) {

    void say(String text) {
        line.accept(text);
        pause.run();
        if (stopped.getAsBoolean()) {
            throw new LiveStopped();
        }
    }
}
