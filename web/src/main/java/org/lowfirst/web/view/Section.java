package org.lowfirst.web.view;

import java.util.Locale;

/** The places of the program, in the order of its navigation. */
public enum Section {
    BANK("/bank"),
    FILL("/fill"),
    BOTTLES("/bottles"),
    AHEAD("/ahead"),
    JOURNAL("/journal"),
    BENCH("/bench");

    private final String path;

    Section(String path) {
        this.path = path;
    }

    /** Its address below the bench's own. */
    public String path() {
        return path;
    }

    /** Key of its name in the words files. */
    public String key() {
        return "section." + name().toLowerCase(Locale.ROOT);
    }
}
