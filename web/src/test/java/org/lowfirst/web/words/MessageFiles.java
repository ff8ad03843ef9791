package org.lowfirst.web.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The message files of all modules, found in their sources. */
public final class MessageFiles {

    private static final String NAMES = "(words|messages|phrases)[.]properties";

    private MessageFiles() {}

    /** The English files; each has its texts in another language beside it, with the language's tag before the ending. */
    public static List<Path> english() {
        try (Stream<Path> files = Files.walk(Path.of(".."))) {
            return files.filter(file -> file.getFileName().toString().matches(NAMES))
                    .filter(file -> file.toString().contains("src/main/resources"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    public static Path in(String language, Path english) {
        return english.resolveSibling(
                english.getFileName().toString().replace(".properties", "_" + language + ".properties"));
    }

    /** The texts of one file by their keys. */
    public static Map<String, String> texts(Path file) {
        Properties properties = new Properties();
        try {
            properties.load(Files.newBufferedReader(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file.toString(), unreadable);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
    }
}
