package org.lowfirst.app.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the key a person most likely meant. */
public final class NearestKey {

    /** Letters of a typed key that are looked at. */
    private static final int LONGEST = 40;

    private NearestKey() {}

    /** The known key that differs from what was typed in at most a third of its letters; case and signs do not count. */
    public static Optional<String> find(String typed, Collection<String> known) {
        return known.stream()
                .filter(key -> distance(letters(typed), letters(key)) <= Math.max(1, key.length() / 3))
                .min(Comparator.comparingInt((String key) -> distance(letters(typed), letters(key)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static String letters(String key) {
        StringBuilder letters = new StringBuilder();
        key.toLowerCase(Locale.ROOT)
                .codePoints()
                .filter(Character::isLetterOrDigit)
                .limit(LONGEST)
                .forEach(letters::appendCodePoint);
        return letters.toString();
    }

    /** Smallest number of letters to insert, delete or change (Levenshtein distance). */
    private static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[b.length()];
    }
}
