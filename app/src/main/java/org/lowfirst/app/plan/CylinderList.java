package org.lowfirst.app.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Listing;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;

/** Reads the list of supplies or of bottles: that it is a list, is not too long, and that no name is there twice. */
final class CylinderList {

    private final String key;
    private final String word;
    private final int most;
    private final Problems problems;

    /**
     * @param key key of the list
     * @param word what one of them is called
     * @param most how many there may be
     */
    CylinderList(String key, String word, int most, Problems problems) {
        this.key = key;
        this.word = word;
        this.most = most;
        this.problems = problems;
    }

    /** Reads one cylinder of the list. */
    interface OneCylinder<L> {

        /**
         * @param mapping its keys as written
         * @param number its place in the list, from 1
         */
        Optional<L> read(Mapping mapping, int number);
    }

    /** The cylinders that could be read, in the order of the file. */
    <L extends CylinderReader.Line> List<L> read(Section file, OneCylinder<L> one) {
        List<L> lines = new ArrayList<>();
        Map<String, Place> names = new HashMap<>();
        int number = 0;
        for (Tree item : items(file)) {
            number++;
            if (item instanceof Mapping mapping) {
                one.read(mapping, number).ifPresent(line -> {
                    checkName(line, names);
                    lines.add(line);
                });
            } else {
                problems.error(
                        item.place(),
                        "The " + Numerals.ordinal(number) + " " + word + " is " + item.kind()
                                + ". Write its keys, for example - {name: A, water_volume: 50 L, ...}.");
            }
        }
        return lines;
    }

    private void checkName(CylinderReader.Line line, Map<String, Place> names) {
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
                "There are " + listing.items().size() + " " + key + "; a plan takes at most " + most
                        + ". Split the file here.");
        return List.of();
    }
}
