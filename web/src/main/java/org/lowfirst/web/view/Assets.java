package org.lowfirst.web.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;

/**
 * Addresses of the stylesheet, scripts and fonts. Each carries a mark of the contents of all, so that a browser may keep them for
 * a year and still sees a new version at once.
 */
public final class Assets {

    /** Where the scripts of the htmx library are on the class path, below META-INF/resources. */
    public static final String HTMX_FOLDER = "webjars/htmx.org/2.0.10/dist/";

    private static final List<String> MARKED = List.of(
            "static/lowfirst.css",
            "static/lowfirst.js",
            "static/icon.svg",
            "META-INF/resources/" + HTMX_FOLDER + "htmx.min.js");

    private final String folder;

    private Assets(String folder) {
        this.folder = folder;
    }

    /** Reads what is on the class path. */
    public static Assets onClassPath() {
        CRC32 mark = new CRC32();
        for (String file : MARKED) {
            try (InputStream in = Assets.class.getClassLoader().getResourceAsStream(file)) {
                if (in == null) {
                    throw new IllegalStateException("The file " + file + " is missing.\nMaybe build again.");
                }
                mark.update(in.readAllBytes());
            } catch (IOException unreadable) {
                throw new UncheckedIOException("The file " + file + " cannot be read.", unreadable);
            }
        }
        return new Assets(String.format(Locale.ROOT, "/assets/%08x/", mark.getValue()));
    }

    /** The address everything is below, with a slash at the end. */
    public String folder() {
        return folder;
    }

    public String stylesheet() {
        return folder + "lowfirst.css";
    }

    public String script() {
        return folder + "lowfirst.js";
    }

    public String htmx() {
        return folder + "htmx.min.js";
    }

    public String icon() {
        return folder + "icon.svg";
    }

    public String font(String name) {
        return folder + "font/" + name;
    }
}
