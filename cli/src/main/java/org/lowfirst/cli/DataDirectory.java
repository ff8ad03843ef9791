package org.lowfirst.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where the journal is kept unless a person says otherwise: the folder each platform sets apart for a user's data. */
final class DataDirectory {

    private DataDirectory() {}

    /**
     * The folder; it need not exist.
     *
     * <p>Linux and others: {@code $XDG_DATA_HOME/lowfirst}, or {@code ~/.local/share/lowfirst} when that is not set to an
     * absolute path (XDG Base Directory Specification 0.8). macOS: {@code ~/Library/Application Support/Lowfirst}. Windows:
     * {@code %LOCALAPPDATA%\Lowfirst}.
     *
     * @param system name of the operating system, as Java has it in os.name
     * @param home the user's home folder
     * @param environment environment variables
     */
    static Path of(String system, Path home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Lowfirst");
        }
        if (name.startsWith("windows")) {
            String local = environment.getOrDefault("LOCALAPPDATA", "");
            Path folder = local.isEmpty() ? home.resolve("AppData").resolve("Local") : Path.of(local);
            return folder.resolve("Lowfirst");
        }
        String xdg = environment.getOrDefault("XDG_DATA_HOME", "");
        Path folder =
                xdg.startsWith("/") ? Path.of(xdg) : home.resolve(".local").resolve("share");
        return folder.resolve("lowfirst");
    }

    /** The folder of this user on this machine. */
    static Path ofThisUser() {
        return of(System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")), System.getenv());
    }
}
