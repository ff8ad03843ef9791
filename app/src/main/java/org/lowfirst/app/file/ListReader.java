package org.lowfirst.app.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Tree.Listing;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;

/** Reads a list of groups of keys, such as supplies: that it is a list, is not too long, and that no name is there twice. */
public final class ListReader {

    private final String key;
    private final String word;
    private final String example;
    private final int most;
    private final String whole;
    private final Problems problems;

    /**
     * @param key key of the list
     * @param word what one of them is called
     * @param example first keys of one, as written between braces
     * @param most how many there may be
     * @param whole what takes at most so many, e.g. "a plan"
     */
    public ListReader(String key, String word, String example, int most, String whole, Problems problems) {
        this.key = key;
        this.word = word;
        this.example = example;
        this.most = most;
        this.whole = whole;
        this.problems = problems;
    }

    /** Something of a list that has a name of its own. */
    public interface Named {

        String name();

        Place namePlace();
    }

    /** Reads one group of the list. */
    public interface One<L> {

        /**
         * @param mapping its keys as written
         * @param number its place in the list, from 1
         */
        Optional<L> read(Mapping mapping, int number);
    }

    /** Those that could be read, in the order of the file. */
    public <L> List<L> read(Section file, One<L> one) {
        List<L> lines = new ArrayList<>();
        Map<String, Place> names = new HashMap<>();
        int number = 0;
        for (Tree item : items(file)) {
            number++;
            if (item instanceof Mapping mapping) {
                one.read(mapping, number).ifPresent(line -> {
                    if (line instanceof Named named) {
                        checkName(named, names);
                    }
                    lines.add(line);
                });
            } else {
                problems.error(
                        item.place(),
                        "The " + Numerals.ordinal(number) + " " + word + " is " + item.kind()
                                + ". Write its keys, for example - {" + example + ", ...}.");
            }
        }
        return lines;
    }

    private void checkName(Named line, Map<String, Place> names) {
        Place first = names.putIfAbsent(line.name(), line.namePlace());
        if (first != null) {
            problems.error(
                    line.namePlace(),
                    "The name \"" + line.name() + "\" is given to two " + key + ", first in line " + first.line()
                            + ". Give each its own name.");
        }
    }

    private List<Tree> items(Section file) {
        Optional<Tree> tree = file.find(key);
        if (tree.isEmpty()) {
            problems.error(
                    file.place(),
                    "The list of " + key + " is missing. Add " + key + ": with one line for each " + word + ".");
            return List.of();
        }
        if (tree.get() instanceof Listing listing && !listing.items().isEmpty()) {
            return atMost(listing);
        }
        boolean nothing = tree.get() instanceof Listing || isEmpty(tree.get());
        problems.error(
                file.placeOfKey(key),
                nothing
                        ? "There is no " + word + " under " + key + ". Add one line for each, starting with \"- \"."
                        : "What stands under " + key + " is " + tree.get().kind() + " instead of a list. "
                                + "Start each " + word + " with \"- \".");
        return List.of();
    }

    private static boolean isEmpty(Tree tree) {
        return tree instanceof Scalar scalar && scalar.isEmpty();
    }

    private List<Tree> atMost(Listing listing) {
        if (listing.items().size() <= most) {
            return listing.items();
        }
        problems.error(
                listing.items().get(most).place(),
                "There are " + listing.items().size() + " " + key + "; " + whole + " takes at most " + most
                        + ". Split the file here.");
        return List.of();
    }
}
