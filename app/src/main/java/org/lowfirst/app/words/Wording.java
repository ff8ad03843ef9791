package org.lowfirst.app.words;

import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

/** The words of one package in one language, from its words.properties. Immutable. */
public final class Wording {

    private final ResourceBundle texts;

    private Wording(ResourceBundle texts) {
        this.texts = texts;
    }

    /**
     * The words in the nearest language there is.
     *
     * @param owner a class of the package whose words they are
     */
    public static Wording of(Class<?> owner, Locale locale) {
        ResourceBundle.Control control =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Wording(
                ResourceBundle.getBundle(owner.getPackageName() + ".words", locale, owner.getClassLoader(), control));
    }

    /** The language they are in; of English, the root locale. */
    public Locale locale() {
        return texts.getLocale();
    }

    /**
     * @param values what to fill in, by the name in braces
     * @throws java.util.MissingResourceException when the key is unknown
     */
    public String text(String key, Map<String, String> values) {
        StringBuilder out = new StringBuilder();
        String text = texts.getString(key);
        int from = 0;
        int open = text.indexOf('{');
        while (open >= 0) {
            int close = text.indexOf('}', open);
            String name = text.substring(open + 1, close);
            String value = values.get(name);
            if (value == null) {
                throw new IllegalArgumentException("The text " + key + " needs a value for " + name + ".");
            }
            out.append(text, from, open).append(value);
            from = close + 1;
            open = text.indexOf('{', from);
        }
        return out.append(text, from, text.length()).toString();
    }

    /** Whether there is a text under a key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }
}
