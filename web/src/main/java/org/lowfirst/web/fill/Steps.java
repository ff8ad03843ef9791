package org.lowfirst.web.fill;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;

/**
 * Addresses of the steps of a fill. An address carries where the browser stands and when it got there; one that is older is not
 * trusted, because valves may have been moved since.
 */
public final class Steps {

    static final Position FIRST = new Position(1, Phase.CONNECT, null);

    /** After so long on one step it counts as an interruption (common practice, no source). */
    private static final Duration TRUSTED = Duration.ofMinutes(30);

    private Steps() {}

    /** The address of a step. */
    public static String at(String fillPath, Position position, Instant now) {
        return fillPath + "?at=" + position.toText() + "&seen=" + now.getEpochSecond();
    }

    /** Where the browser stands; nothing when it does not say, says nonsense, or said it too long ago. */
    static Optional<Position> find(@Nullable String at, @Nullable String seen, Instant now) {
        if (at == null || seen == null || !seen.matches("[0-9]{1,12}")) {
            return Optional.empty();
        }
        Duration gone = Duration.between(Instant.ofEpochSecond(Long.parseLong(seen)), now);
        if (gone.compareTo(TRUSTED) > 0 || gone.isNegative()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Position.parse(at));
        } catch (IllegalArgumentException notMadeHere) {
            return Optional.empty();
        }
    }
}
