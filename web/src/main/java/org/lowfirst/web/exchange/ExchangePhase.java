package org.lowfirst.web.exchange;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The order of work while a supply is taken off (common practice, no source). An address carries where the browser stands and
 * when it got there; one that is older is not trusted, because valves may have been moved since.
 */
enum ExchangePhase {
    /** Every valve shut. */
    SHUT,
    /** The supply alone open to its gauge: what is left in it. */
    READ,
    /** Lines vented with every supply shut. */
    VENT,
    /** Loosened, capped, off. */
    OFF;

    /** After so long on one step it counts as an interruption (common practice, no source). */
    private static final Duration TRUSTED = Duration.ofMinutes(30);

    /** Where the browser stands; nothing when it does not say, says nonsense, or said it too long ago. */
    static Optional<ExchangePhase> find(@Nullable String at, @Nullable String seen, Instant now) {
        if (at == null || seen == null || !seen.matches("[0-9]{1,12}")) {
            return Optional.empty();
        }
        Duration gone = Duration.between(Instant.ofEpochSecond(Long.parseLong(seen)), now);
        if (gone.compareTo(TRUSTED) > 0 || gone.isNegative()) {
            return Optional.empty();
        }
        return Arrays.stream(values()).filter(phase -> phase.text().equals(at)).findFirst();
    }

    /** The address of this step. */
    String at(String path, Instant now) {
        return path + "?at=" + text() + "&seen=" + now.getEpochSecond();
    }

    /** Its place in the order of work, from 1. */
    int number() {
        return Arrays.asList(values()).indexOf(this) + 1;
    }

    String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Key of its words, followed by {@code .todo}, {@code .then} and {@code .done}. */
    String key() {
        return "exchange.step." + text();
    }
}
