package org.lowfirst.web.words;

import java.util.EnumMap;
import java.util.Map;
import org.lowfirst.station.Language;
import org.springframework.context.i18n.LocaleContextHolder;

/**
 * The language of the request being answered: what the browser asks for, until a bench is opened, then the bench's. Kept with the
 * thread that answers, which forgets it afterwards.
 */
public final class Spoken {

    private static final Map<Language, Words> WORDS = new EnumMap<>(Language.class);

    static {
        for (Language language : Language.values()) {
            WORDS.put(language, Words.in(language.locale()));
        }
    }

    private Spoken() {}

    public static Language language() {
        return Language.nearest(LocaleContextHolder.getLocale());
    }

    /** Goes on in another language. */
    public static void speak(Language language) {
        LocaleContextHolder.setLocale(language.locale());
    }

    /** The words of the language spoken now. */
    public static Words words() {
        return words(language());
    }

    public static Words words(Language language) {
        Words words = WORDS.get(language);
        if (words == null) {
            throw new AssertionError("no words for " + language);
        }
        return words;
    }
}
