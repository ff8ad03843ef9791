package org.lowfirst.planning.words;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lowfirst.gas.Texts;

/**
 * The phrases in one language, from phrases.properties. Immutable.
 *
 * <p>A text names what is filled in by braces, as in {@code {bottle}}; nothing else in it is special.
 */
public final class Phrases {

    private static final Pattern OF_CYLINDER = Pattern.compile("(.+ of (?:bottle|supply|alternative|event)) (.+)");

    private final Texts texts;

    private Phrases(Texts texts) {
        this.texts = texts;
    }

    /** The phrases in the language nearest to {@code language}; English when there is none. */
    public static Phrases in(Locale language) {
        return new Phrases(Texts.of(Phrases.class, "phrases", language));
    }

    /**
     * One sentence or phrase.
     *
     * @param values what to fill in, by the name in braces
     * @throws java.util.MissingResourceException when the key is unknown
     */
    public String text(String key, Map<String, String> values) {
        return texts.text(key, values);
    }

    /**
     * What was measured, as people call it: a refusal names it in English, with the name of a cylinder behind, e.g. "reading of
     * supply A". What has no entry here stays as it is.
     */
    public String noun(String what) {
        Matcher cylinder = OF_CYLINDER.matcher(what);
        String key = key(cylinder.matches() ? cylinder.group(1) : what);
        if (!texts.has(key)) {
            return what;
        }
        return cylinder.matches() ? text(key, Map.of("name", cylinder.group(2))) : texts.text(key, Map.of());
    }

    /** What is asked for, as people say it: a refusal says it in English. What has no entry here stays as it is. */
    public String rule(String rule) {
        String key = "rule." + rule.strip().replace(",", "").replace(' ', '-');
        return texts.has(key) ? texts.text(key, Map.of()) : rule;
    }

    private static String key(String phrase) {
        return "noun." + phrase.strip().replace(' ', '-');
    }
}
