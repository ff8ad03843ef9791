package org.lowfirst.app.file;

import java.util.Optional;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.sheet.Numerals;

/** Reads the name of something in a list. */
public final class NameReader {

    private static final int LONGEST = 40;

    private final Problems problems;

    public NameReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * The name, under the key "name".
     *
     * @param word what is named, e.g. "supply"
     * @param number its place in the list, from 1
     * @param example a name such a thing may have
     */
    public Optional<String> read(Section section, String word, int number, String example) {
        String what = "name of the " + Numerals.ordinal(number) + " " + word;
        Optional<Scalar> scalar = section.required("name", what, example);
        scalar.ifPresent(name -> check(name, what));
        return scalar.map(Scalar::text);
    }

    /** How problems name a thing: with its name, or with its place in the list when it has none. */
    public static String label(String word, Optional<String> name, int number) {
        return name.map(known -> word + " " + known).orElse("the " + Numerals.ordinal(number) + " " + word);
    }

    private void check(Scalar name, String what) {
        int length = name.text().codePointCount(0, name.text().length());
        if (length > LONGEST) {
            problems.error(
                    name.place(),
                    "The " + what + " has " + length + " characters; at most " + LONGEST
                            + " fit on the sheet. Shorten it.");
        } else if (name.text().codePoints().anyMatch(Character::isISOControl)) {
            problems.error(name.place(), "The " + what + " has a line break or control character in it. Remove it.");
        }
    }
}
