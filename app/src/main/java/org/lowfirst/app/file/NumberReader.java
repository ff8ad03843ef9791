package org.lowfirst.app.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lowfirst.app.file.Tree.Listing;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;

/**
 * Reads plain numbers of one file: counts, prices, shares. What they can be meant to be is judged later, by whoever works with
 * them; {@link #findPlace} then tells where each stands.
 */
public final class NumberReader {

    private static final Pattern NUMBER = Pattern.compile("[-+]?([0-9]+([.][0-9]*)?|[.][0-9]+)([eE][-+]?[0-9]{1,3})?");
    private static final double LARGEST_WHOLE = 1e15;

    private final Problems problems;
    private final Map<String, Place> places = new HashMap<>();

    public NumberReader(Problems problems) {
        this.problems = problems;
    }

    /** Remembers where something stands, for later. */
    public void note(String what, Place place) {
        places.putIfAbsent(what, place);
    }

    /** Where the thing stands that problems call this. */
    public Optional<Place> findPlace(String what) {
        return Optional.ofNullable(places.get(what));
    }

    /**
     * A number that must be there.
     *
     * @param what how problems name it, e.g. "price of a delivery"
     * @param example what a right one looks like
     */
    public Optional<Double> required(Section section, String key, String what, String example) {
        return section.required(key, what, example).flatMap(scalar -> number(scalar, key, what, example));
    }

    /** A number that may be left out; empty also when it cannot be read. */
    public Optional<Double> optional(Section section, String key, String what, String example) {
        return section.optional(key, what, example).flatMap(scalar -> number(scalar, key, what, example));
    }

    /** A whole number that must be there. */
    public Optional<Long> requiredWhole(Section section, String key, String what, String example) {
        return required(section, key, what, example).flatMap(number -> whole(section, key, what, number));
    }

    /** A whole number that may be left out; empty also when it cannot be read. */
    public Optional<Long> optionalWhole(Section section, String key, String what, String example) {
        return optional(section, key, what, example).flatMap(number -> whole(section, key, what, number));
    }

    /** A list of numbers; empty when it is left out or cannot be read. */
    public Optional<List<Double>> optionalList(Section section, String key, String what, String example) {
        Optional<Tree> tree = section.find(key);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        note(what, section.placeOf(key));
        if (!(tree.get() instanceof Listing listing)) {
            problems.error(
                    section.placeOf(key),
                    "The " + what + " are " + tree.get().kind() + ". Write " + key + ": " + example + ".");
            return Optional.empty();
        }
        List<Double> numbers = new ArrayList<>();
        for (Tree item : listing.items()) {
            if (item instanceof Scalar scalar) {
                number(scalar, key, what, example).ifPresent(numbers::add);
            } else {
                problems.error(item.place(), "One of the " + what + " is " + item.kind() + ". Write a number.");
            }
        }
        return numbers.size() == listing.items().size() ? Optional.of(numbers) : Optional.empty();
    }

    private Optional<Double> number(Scalar scalar, String key, String what, String example) {
        note(what, scalar.place());
        String text = scalar.text().strip();
        if (NUMBER.matcher(text).matches()) {
            double value = Double.parseDouble(text);
            if (!Double.isInfinite(value)) {
                return Optional.of(value + 0.0);
            }
        }
        problems.error(
                scalar.place(),
                "The " + what + " (" + text + ") must be a plain number without a unit. Write " + key + ": " + example
                        + ".");
        return Optional.empty();
    }

    private static String text(Tree tree) {
        return tree instanceof Scalar scalar ? scalar.text().strip() : "";
    }

    private Optional<Long> whole(Section section, String key, String what, double number) {
        if (number == Math.rint(number) && Math.abs(number) < LARGEST_WHOLE) {
            return Optional.of((long) number);
        }
        String rule = number == Math.rint(number) ? "below " + Numerals.grouped(LARGEST_WHOLE) : "a whole number";
        problems.error(
                section.placeOf(key),
                "The " + what + " (" + section.find(key).map(NumberReader::text).orElse("") + ") must be " + rule
                        + ". Correct it.");
        return Optional.empty();
    }
}
