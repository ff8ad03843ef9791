package org.lowfirst.app.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.gas.Parsed;

/**
 * What a value of a plan file can be meant to be, from plausible-ranges.yaml.
 *
 * @param kind kind of quantity
 * @param least the least allowed
 * @param most the most allowed
 * @param leastWritten the least, as the file of ranges has it
 * @param mostWritten the most, likewise
 * @param advice what to say to somebody outside, or empty to look for a unit that fits
 */
public record PlausibleRange<T extends Comparable<T>>(
        Kind<T> kind, T least, T most, String leastWritten, String mostWritten, Optional<String> advice) {

    private static final List<String> KEYS = List.of("least", "most", "advice", "source");

    /** Says what is wrong with a measure, or nothing when it is inside. */
    public Optional<String> findFault(String what, Measure<T> measure) {
        if (contains(measure.value())) {
            return Optional.empty();
        }
        String sentence = String.format(
                Locale.ROOT,
                "The %s (%s) must be %s to %s. ",
                what,
                measure.written(),
                limit(least, leastWritten, measure.unit()),
                limit(most, mostWritten, measure.unit()));
        return Optional.of(sentence + advice.orElseGet(() -> otherUnit(measure)));
    }

    /** Whether a value can be meant. */
    public boolean contains(T value) {
        return value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
    }

    private String otherUnit(Measure<T> measure) {
        return kind.units().stream()
                .map(unit -> Numerals.grouped(measure.number()) + " " + unit)
                .filter(written -> kind.read().apply(written) instanceof Parsed.Read<T> read && contains(read.value()))
                .findFirst()
                .map(written -> "Maybe " + written + " was meant.")
                .orElse("Check the number and its unit.");
    }

    /** A limit as the file of ranges has it, and in the unit that was typed when that is another one. */
    private String limit(T value, String written, String unit) {
        String own = Numerals.grouped(written);
        return written.endsWith(" " + unit)
                ? own
                : kind.in()
                        .apply(value, unit)
                        .map(number -> Numerals.rounded(number) + " " + unit)
                        .orElse(own);
    }

    /** The range of one name. */
    public static <T extends Comparable<T>> PlausibleRange<T> of(String name, Kind<T> kind) {
        Problems none = new Problems();
        Mapping ranges = (Mapping) Loaded.RANGES;
        Mapping range = (Mapping)
                new Section(ranges, "ranges", List.of(name), none).find(name).orElseThrow();
        Section section = new Section(range, name, KEYS, none);
        String least = text(section, "least").orElseThrow();
        String most = text(section, "most").orElseThrow();
        return new PlausibleRange<>(
                kind,
                kind.read().apply(least).orElseThrow(),
                kind.read().apply(most).orElseThrow(),
                least,
                most,
                text(section, "advice"));
    }

    private static Optional<String> text(Section section, String key) {
        return section.find(key).map(Scalar.class::cast).map(Scalar::text);
    }

    private static final class Loaded {

        static final Tree RANGES = read();

        private static Tree read() {
            String name = "plausible-ranges.yaml";
            try (InputStream in = Objects.requireNonNull(PlausibleRange.class.getResourceAsStream(name), name)) {
                Problems problems = new Problems();
                SourceText source = new SourceText(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
                return TreeReader.read(source, problems)
                        .orElseThrow(() -> new IllegalStateException(problems.inOrder().stream()
                                .map(Problem::sentence)
                                .collect(Collectors.joining(" "))));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }
}
