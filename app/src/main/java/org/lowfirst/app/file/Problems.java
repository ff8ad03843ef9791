package org.lowfirst.app.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.file.Problem.Severity;
import org.lowfirst.app.words.Wording;

/** Collects the problems of one file, so that a person sees them all at once. Not thread-safe. */
public final class Problems {

    private static final Comparator<Problem> READING_ORDER =
            Comparator.comparing(Problem::place, Comparator.nullsFirst(Comparator.naturalOrder()));

    private final List<Problem> found = new ArrayList<>();
    private final Locale language;

    /** Problems said in English. */
    public Problems() {
        this(Locale.ENGLISH);
    }

    /** @param language in which {@link #say} answers */
    public Problems(Locale language) {
        this.language = language;
    }

    /** A sentence of the files' words, with what is filled in by the names in braces. */
    public String say(String key, Map<String, String> values) {
        return Wording.of(Problems.class, language).text(key, values);
    }

    /** The language the problems are said in. */
    public Locale language() {
        return language;
    }

    public void error(Place place, String sentence) {
        found.add(new Problem(Severity.ERROR, place, sentence));
    }

    public void warning(Place place, String sentence) {
        found.add(new Problem(Severity.WARNING, place, sentence));
    }

    public void fileError(String sentence) {
        found.add(new Problem(Severity.ERROR, null, sentence));
    }

    /** How many there are. */
    public int count() {
        return found.size();
    }

    public boolean haveErrors() {
        return found.stream().anyMatch(Problem::isError);
    }

    /** The problems in the order of the file; those about the file as a whole first. */
    public List<Problem> inOrder() {
        return found.stream().sorted(READING_ORDER).toList();
    }
}
