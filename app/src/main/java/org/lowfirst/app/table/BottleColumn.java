package org.lowfirst.app.table;

import java.util.Locale;

/** The columns of a table of bottles, in the order they are written. */
public enum BottleColumn {
    ID,
    NAME,
    OWNER,
    VOLUME,
    KNOWN_BY,
    SOURCE,
    MARKED,
    MATERIAL,
    USUAL,
    RETIRED,
    /** What its gauge shows now; never written. */
    READING;

    /** Its name in forms and in the words file. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
