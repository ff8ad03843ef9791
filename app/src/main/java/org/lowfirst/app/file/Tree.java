package org.lowfirst.app.file;

import java.util.List;

/** A YAML document as written, each part with its place; nothing is turned into numbers or truth values. */
public sealed interface Tree {

    Place place();

    /** What people call this kind of thing. */
    String kind();

    /**
     * One value.
     *
     * @param text the value without quotes
     * @param plain whether it stands without quotes
     */
    record Scalar(String text, boolean plain, Place place) implements Tree {

        /** Whether nothing was written: no text, or the YAML words for nothing. */
        public boolean isEmpty() {
            return text.isBlank() || (plain && (text.equals("~") || text.equals("null")));
        }

        @Override
        public String kind() {
            return isEmpty() ? "nothing" : "a single value";
        }
    }

    /** A list: {@code - a} lines or {@code [a, b]}. */
    record Listing(List<Tree> items, Place place) implements Tree {

        public Listing {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /**
     * Keys with values: {@code key: value} lines or {@code {key: value}}.
     *
     * @param braces whether it is written with braces, where a comma ends a value
     */
    record Mapping(List<Pair> pairs, boolean braces, Place place) implements Tree {

        public Mapping {
            pairs = List.copyOf(pairs);
        }

        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    /** One key with its value. */
    record Pair(Tree key, Tree value) {}
}
