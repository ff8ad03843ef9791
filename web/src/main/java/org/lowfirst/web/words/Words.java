package org.lowfirst.web.words;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * Looks up the words of the screens in one language. Immutable.
 *
 * <p>A text may hold {@code {0}}, {@code {1}}... which are replaced by what is passed, in order; nothing else in a text is
 * special. Keys that count something come as {@code key.one} and {@code key.many}.
 */
public final class Words {

    private static final String BUNDLE = "org.lowfirst.web.messages";

    private final ResourceBundle texts;

    private Words(ResourceBundle texts) {
        this.texts = texts;
    }

    /** The words in the language nearest to {@code locale}; English when there is none. */
    public static Words in(Locale locale) {
        return new Words(ResourceBundle.getBundle(
                BUNDLE, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }

    /**
     * One text.
     *
     * @throws MissingResourceException when the key is unknown; a test keeps that from happening
     */
    public String of(String key, Object... values) {
        return filled(texts.getString(key), values);
    }

    /** The text for {@code count} of something; {@code {0}} is the count, then {@code values}. */
    public String count(String key, long count, Object... values) {
        Object[] all = new Object[values.length + 1];
        all[0] = count;
        System.arraycopy(values, 0, all, 1, values.length);
        return of(key + (count == 1 ? ".one" : ".many"), all);
    }

    /** Language of the texts, as in HTML's lang attribute. */
    public String language() {
        String tag = texts.getLocale().toLanguageTag();
        return tag.equals("und") ? "en" : tag;
    }

    /** The same as a locale. */
    public Locale locale() {
        return Locale.forLanguageTag(language());
    }

    boolean has(String key) {
        return texts.containsKey(key);
    }

    private static String filled(String text, Object... values) {
        StringBuilder filled = new StringBuilder(text.length() + 16);
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            filled.append(text, from, open).append(values[Integer.parseInt(text, open + 1, close, 10)]);
            from = close + 1;
        }
        return filled.append(text, from, text.length()).toString();
    }
}
