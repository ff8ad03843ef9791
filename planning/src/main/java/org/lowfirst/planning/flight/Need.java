package org.lowfirst.planning.flight;

import java.util.List;

/**
 * What one rule asks in this flight.
 *
 * @param spans when it asks it, in order, not overlapping, never empty
 */
public record Need(OxygenRule rule, List<Span> spans) {

    public Need {
        spans = List.copyOf(spans);
    }

    public double seconds() {
        return spans.stream().mapToDouble(Span::seconds).sum();
    }
}
