package org.lowfirst.app.words;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Locale;

/** Names of files that every system takes: small letters, digits and hyphens. */
public final class FileName {

    private FileName() {}

    /**
     * @param what what is in it
     * @param whose name of the bench, of anything
     * @param ending without its point
     */
    public static String of(String what, String whose, LocalDate day, String ending) {
        String plain = Normalizer.normalize(what + " " + whose, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return plain + "-" + day + "." + ending;
    }
}
