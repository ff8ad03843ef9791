package org.lowfirst.app.file;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Pair;
import org.lowfirst.app.file.Tree.Scalar;

/** One group of keys of a plan file: which keys it may have, and their values. */
public final class Section {

    private final Place place;
    private final String group;
    private final List<String> known;
    private final Problems problems;
    private final Map<String, Pair> pairs = new LinkedHashMap<>();
    private final Set<String> spoiled = new HashSet<>();
    private final Map<String, Scalar> strangers = new LinkedHashMap<>();

    /**
     * @param mapping the group as written
     * @param group how problems name it, e.g. "a supply"
     * @param known its keys
     */
    public Section(Mapping mapping, String group, List<String> known, Problems problems) {
        this.place = mapping.place();
        this.group = group;
        this.known = known;
        this.problems = problems;
        Pair before = null;
        for (Pair pair : mapping.pairs()) {
            if (!isSplitValue(mapping, before, pair)) {
                take(pair);
            }
            before = pair;
        }
    }

    public Place place() {
        return place;
    }

    /** Where the value of a key stands, or the whole group when it has none. */
    public Place placeOf(String key) {
        Pair pair = pairs.get(key);
        return pair == null ? place : pair.value().place();
    }

    /** Where a key stands, or the whole group when it is not there. */
    public Place placeOfKey(String key) {
        Pair pair = pairs.get(key);
        return pair == null ? place : pair.key().place();
    }

    /** What stands under a key, if anything does. */
    public Optional<Tree> find(String key) {
        return Optional.ofNullable(pairs.get(key)).map(Pair::value);
    }

    /**
     * The single value of a key that may be left out.
     *
     * @param key the key
     * @param what how problems name the value, e.g. "reading of supply A"
     * @param example what a right value looks like
     */
    public Optional<Scalar> optional(String key, String what, String example) {
        Pair pair = pairs.get(key);
        if (pair == null || spoiled.contains(key)) {
            return Optional.empty();
        }
        if (pair.value() instanceof Scalar scalar && !scalar.isEmpty()) {
            return Optional.of(scalar);
        }
        String found = pair.value() instanceof Scalar
                ? "is empty"
                : "is " + pair.value().kind();
        Place at = pair.value() instanceof Scalar
                ? pair.key().place()
                : pair.value().place();
        problems.error(
                at, "The " + what + " " + found + ". Write one value, for example " + key + ": " + example + ".");
        return Optional.empty();
    }

    /** The single value of a key that must be there. */
    public Optional<Scalar> required(String key, String what, String example) {
        if (!pairs.containsKey(key) && !spoiled.contains(key)) {
            reportMissing(key, what, example);
        }
        return optional(key, what, example);
    }

    /** Warns of the keys that nobody asked for; to be called when all values have been read. */
    public void reportStrangers() {
        strangers.values().forEach(key -> problems.warning(key.place(), unknown(key.text())));
    }

    private void reportMissing(String key, String what, String example) {
        Optional<Scalar> typed = strangers.values().stream()
                .filter(stranger -> NearestKey.find(stranger.text(), known)
                        .filter(key::equals)
                        .isPresent())
                .findFirst();
        if (typed.isPresent()) {
            Scalar stranger = typed.get();
            strangers.remove(stranger.text());
            problems.error(
                    stranger.place(),
                    "The " + what + " is missing; \"" + stranger.text() + "\" is not a key of " + group + ". Maybe \""
                            + key + "\" was meant.");
        } else {
            problems.error(
                    place, "The " + what + " is missing. Add " + key + ", for example " + key + ": " + example + ".");
        }
    }

    private void take(Pair pair) {
        if (!(pair.key() instanceof Scalar key)) {
            problems.error(
                    pair.key().place(),
                    "A key of " + group + " is " + pair.key().kind() + "; write a word.");
            return;
        }
        String name = key.text();
        if (isMissingSpace(key)) {
            return;
        }
        if (!known.contains(name)) {
            strangers.put(name, key);
        } else if (pairs.containsKey(name)) {
            int line = pairs.get(name).key().place().line();
            problems.error(
                    key.place(),
                    "The key \"" + name + "\" of " + group + " is there twice, first in line " + line
                            + ". Keep the one that is right.");
        } else {
            pairs.put(name, pair);
        }
    }

    private String unknown(String name) {
        String advice = NearestKey.find(name, known)
                .map(nearest -> "Maybe \"" + nearest + "\" was meant.")
                .orElse("Its keys are " + String.join(", ", known) + ".");
        return "The key \"" + name + "\" of " + group + " is not known and is left out. " + advice;
    }

    /** {@code reading:150 bar} is one word to YAML. */
    private boolean isMissingSpace(Scalar key) {
        int colon = key.text().indexOf(':');
        if (!key.plain() || colon < 0 || !known.contains(key.text().substring(0, colon))) {
            return false;
        }
        String name = key.text().substring(0, colon);
        String value = key.text().substring(colon + 1);
        spoiled.add(name);
        problems.error(key.place(), "A space is missing after the colon. Write " + name + ": " + value + ".");
        return true;
    }

    /** {@code {reading: 2,015 psi}} is the value 2 and the key "015 psi" to YAML. */
    private boolean isSplitValue(Mapping mapping, @org.jspecify.annotations.Nullable Pair before, Pair pair) {
        if (!mapping.braces()
                || before == null
                || !(before.key() instanceof Scalar name)
                || !(before.value() instanceof Scalar head && head.plain())
                || !(pair.key() instanceof Scalar tail && tail.plain())
                || !(pair.value() instanceof Scalar nothing && nothing.isEmpty())
                || !head.text().matches("-?[0-9]+")
                || !tail.text().matches("[0-9].*")) {
            return false;
        }
        spoiled.add(name.text());
        boolean thousands = head.text().matches("-?[1-9].*") && tail.text().matches("[0-9]{3}([^0-9].*)?");
        String joined = head.text() + (thousands ? "" : ".") + tail.text();
        Place start = head.place();
        Place end = tail.place();
        int width = start.line() == end.line() ? end.column() + end.width() - start.column() : start.width();
        problems.error(
                new Place(start.line(), start.column(), width),
                "Inside braces a comma ends the value, so this is read as " + head.text() + " and \"" + tail.text()
                        + "\". Write " + joined + ", or put the value in quotes.");
        return true;
    }
}
