package org.lowfirst.app.file;

import java.util.Optional;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.gas.Parsed;

/** Reads the quantities of one group of keys. */
public final class MeasureReader {

    private final Section section;
    private final Problems problems;

    public MeasureReader(Section section, Problems problems) {
        this.section = section;
        this.problems = problems;
    }

    /**
     * A quantity that must be there.
     *
     * @param key its key
     * @param what how problems name it, e.g. "reading of supply A"
     * @param range what it can be
     */
    public <T extends Comparable<T>> Optional<Measure<T>> required(String key, String what, PlausibleRange<T> range) {
        return section.required(key, what, range.kind().example()).flatMap(scalar -> read(scalar, what, range));
    }

    /** A quantity that may be left out. */
    public <T extends Comparable<T>> Optional<Measure<T>> optional(String key, String what, PlausibleRange<T> range) {
        return section.optional(key, what, range.kind().example()).flatMap(scalar -> read(scalar, what, range));
    }

    private <T extends Comparable<T>> Optional<Measure<T>> read(Scalar scalar, String what, PlausibleRange<T> range) {
        Parsed<T> parsed = range.kind().read().apply(scalar.text());
        if (parsed instanceof Parsed.Read<T> read) {
            Measure<T> measure = new Measure<>(read.value(), read.number(), read.unit(), scalar.place());
            Optional<String> fault = range.findFault(what, measure);
            fault.ifPresent(sentence -> problems.error(scalar.place(), sentence));
            return fault.isPresent() ? Optional.empty() : Optional.of(measure);
        }
        Parsed.Unreadable<T> unreadable = (Parsed.Unreadable<T>) parsed;
        problems.error(scalar.place(), "The " + what + " cannot be read: " + unreadable.problem());
        return Optional.empty();
    }
}
