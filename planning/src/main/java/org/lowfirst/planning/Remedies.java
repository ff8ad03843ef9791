package org.lowfirst.planning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * What would make a fill finish that cannot.
 *
 * @param lowerTarget the highest target the bank can reach today; null when no supply can give this bottle anything
 * @param exchanges one choice per supply, best first: those that reach, most fills left, least gas returned, lowest rank; a
 *     supply that is held back is not offered
 */
public record Remedies(@Nullable GaugePressure lowerTarget, List<ExchangeChoice> exchanges) {

    public Remedies {
        exchanges = List.copyOf(exchanges);
    }
}
