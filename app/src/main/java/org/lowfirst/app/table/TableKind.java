package org.lowfirst.app.table;

import java.util.Locale;

/** What can be had as a table. */
public enum TableKind {
    BOTTLES,
    SUPPLIES,
    READINGS,
    FILLS,
    STAGES,
    PEOPLE;

    /** Its name in addresses and in the words file. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
