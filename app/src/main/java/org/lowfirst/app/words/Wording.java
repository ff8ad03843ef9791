package org.lowfirst.app.words;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.gas.Texts;

/** The words of one package in one language, from its words.properties. Immutable. */
public final class Wording {

    private final Texts texts;

    private Wording(Texts texts) {
        this.texts = texts;
    }

    /**
     * The words in the nearest language there is.
     *
     * @param owner a class of the package whose words they are
     */
    public static Wording of(Class<?> owner, Locale locale) {
        return new Wording(Texts.of(owner, "words", locale));
    }

    /** The language they are in; of English, the root locale. */
    public Locale locale() {
        return texts.language();
    }

    /**
     * @param values what to fill in, by the name in braces
     * @throws java.util.MissingResourceException when the key is unknown
     */
    public String text(String key, Map<String, String> values) {
        return texts.text(key, values);
    }

    /** Whether there is a text under a key. */
    public boolean has(String key) {
        return texts.has(key);
    }
}
