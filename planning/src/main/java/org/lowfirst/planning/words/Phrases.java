package org.lowfirst.planning.words;

import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The phrases in one language, from phrases.properties. Immutable.
 *
 * <p>A text names what is filled in by braces, as in {@code {bottle}}; nothing else in it is special.
 */
public final class Phrases {

    private static final Pattern OF_CYLINDER = Pattern.compile("(.+ of (?:bottle|supply|alternative|event)) (.+)");

    private final ResourceBundle texts;

    private Phrases(ResourceBundle texts) {
        this.texts = texts;
    }

    /** The phrases in the language nearest to {@code language}; English when there is none. */
    public static Phrases in(Locale language) {
        ResourceBundle.Control control =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Phrases(ResourceBundle.getBundle(
                Phrases.class.getPackageName() + ".phrases", language, Phrases.class.getClassLoader(), control));
    }

    /**
     * One sentence or phrase.
     *
     * @param values what to fill in, by the name in braces
     * @throws java.util.MissingResourceException when the key is unknown
     */
    public String text(String key, Map<String, String> values) {
        StringBuilder out = new StringBuilder();
        String text = texts.getString(key);
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            String name = text.substring(open + 1, close);
            String value = values.get(name);
            if (value == null) {
                throw new IllegalArgumentException("The phrase " + key + " needs a value for " + name + ".");
            }
            out.append(text, from, open).append(value);
            from = close + 1;
        }
        return out.append(text, from, text.length()).toString();
    }

    /**
     * What was measured, as people call it: a refusal names it in English, with the name of a cylinder behind, e.g. "reading of
     * supply A". What has no entry here stays as it is.
     */
    public String noun(String what) {
        Matcher cylinder = OF_CYLINDER.matcher(what);
        String key = key(cylinder.matches() ? cylinder.group(1) : what);
        if (!texts.containsKey(key)) {
            return what;
        }
        return cylinder.matches() ? text(key, Map.of("name", cylinder.group(2))) : texts.getString(key);
    }

    /** What is asked for, as people say it: a refusal says it in English. What has no entry here stays as it is. */
    public String rule(String rule) {
        String key = "rule." + rule.strip().replace(",", "").replace(' ', '-');
        return texts.containsKey(key) ? texts.getString(key) : rule;
    }

    private static String key(String phrase) {
        return "noun." + phrase.strip().replace(' ', '-');
    }
}
