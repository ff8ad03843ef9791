package org.lowfirst.station;

import java.util.Locale;

/** The languages a bench can be shown in. */
public enum Language {
    ENGLISH(Locale.ENGLISH),
    GERMAN(Locale.GERMAN);

    private final Locale locale;

    Language(Locale locale) {
        this.locale = locale;
    }

    public Locale locale() {
        return locale;
    }

    /** Its tag by BCP 47, e.g. "de". */
    public String tag() {
        return locale.toLanguageTag();
    }

    /** The language of a locale, whatever its country; English when there is none. */
    public static Language nearest(Locale locale) {
        for (Language language : values()) {
            if (language.locale.getLanguage().equals(locale.getLanguage())) {
                return language;
            }
        }
        return ENGLISH;
    }
}
