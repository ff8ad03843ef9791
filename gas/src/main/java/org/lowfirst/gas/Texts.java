package org.lowfirst.gas;

import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

/**
 * The texts of one message file in one language. Immutable.
 *
 * <p>A text names what is filled in by braces, as in {@code {bottle}}; nothing else in it is special.
 */
public final class Texts {

    private final ResourceBundle texts;

    private Texts(ResourceBundle texts) {
        this.texts = texts;
    }

    /**
     * The texts in the nearest language there is; English when there is none.
     *
     * @param owner a class of the package the file lies in
     * @param file name of the file, without language and ending
     */
    public static Texts of(Class<?> owner, String file, Locale language) {
        ResourceBundle.Control control =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Texts(ResourceBundle.getBundle(
                owner.getPackageName() + "." + file, language, owner.getClassLoader(), control));
    }

    /** The language they are in; of English, the root locale. */
    public Locale language() {
        return texts.getLocale();
    }

    /** Whether there is a text under a key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /**
     * @param values what to fill in, by the name in braces
     * @throws java.util.MissingResourceException when the key is unknown
     * @throws IllegalArgumentException when a value is missing
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
                throw new IllegalArgumentException("The text " + key + " needs a value for " + name + ".");
            }
            out.append(text, from, open).append(value);
            from = close + 1;
        }
        return out.append(text, from, text.length()).toString();
    }
}
