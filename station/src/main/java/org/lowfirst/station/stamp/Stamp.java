package org.lowfirst.station.stamp;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.lowfirst.gas.GaugePressure;

/**
 * A line of typing, read.
 *
 * @param line as typed
 * @param parts in the order of the line; together they hold every character that is not a separator
 */
public record Stamp(String line, Convention convention, List<Part> parts) {

    public Stamp {
        parts = List.copyOf(parts);
    }

    /**
     * Reads one line.
     *
     * @param today two-digit years are taken as the latest not after this day's
     */
    public static Stamp read(String line, Convention convention, LocalDate today) {
        return new StampReader(line, convention, today).read();
    }

    /** All parts with one meaning, in the order of the line. */
    public <M extends Meaning> List<M> list(Class<M> type) {
        return meanings(type).toList();
    }

    /** The first part with one meaning. */
    public <M extends Meaning> Optional<M> find(Class<M> type) {
        return meanings(type).findFirst();
    }

    /** The lowest service pressure stamped, for cylinders marked by two countries. */
    public Optional<GaugePressure> findLowestServicePressure() {
        return meanings(Meaning.ServicePressure.class)
                .map(Meaning.ServicePressure::pressure)
                .min(Comparator.naturalOrder());
    }

    /** The latest date that is not to come; one to come is the next test, or a slip, and is named as ambiguous. */
    public Optional<Meaning.TestDate> findLatestTest() {
        return tests().max(Comparator.comparing(Meaning.TestDate::month));
    }

    /** The earliest date: manufacture and first test are stamped as one. */
    public Optional<Meaning.TestDate> findFirstTest() {
        return tests().min(Comparator.comparing(Meaning.TestDate::month));
    }

    private Stream<Meaning.TestDate> tests() {
        return parts.stream()
                .filter(part ->
                        part.ambiguities().stream().noneMatch(way -> way.kind() == Ambiguity.Kind.TEST_OR_NEXT_TEST))
                .map(Part::meaning)
                .filter(Meaning.TestDate.class::isInstance)
                .map(Meaning.TestDate.class::cast);
    }

    /** Parts that were not understood. */
    public List<Part> unknown() {
        return parts.stream()
                .filter(part -> part.meaning() instanceof Meaning.Unknown)
                .toList();
    }

    /** Parts that can be read in another way too. */
    public List<Part> ambiguous() {
        return parts.stream().filter(part -> !part.ambiguities().isEmpty()).toList();
    }

    private <M extends Meaning> Stream<M> meanings(Class<M> type) {
        return parts.stream().map(Part::meaning).filter(type::isInstance).map(type::cast);
    }
}
