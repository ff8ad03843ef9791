package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;
import org.lowfirst.web.words.MessageFiles;

/**
 * Every page that can be reached by links at a bench set to German, searched for English texts of the message files. Left out:
 * papers, files, and the pages of the rule book, whose sources are quoted as published.
 */
final class GermanPagesTest {

    /** Words that no German sentence has. */
    private static final Pattern ENGLISH_WORD = Pattern.compile("\\b(the|and|with|of|is|are|from|not|to)\\b");

    /** Shorter pieces occur by chance. */
    private static final int LONG_ENOUGH = 14;

    private static final int MOST_PAGES = 150;

    @TempDir
    Path directory;

    private final Browser browser = new Browser();

    @Test
    void noPageOfAGermanBenchShowsAnEnglishText() {
        try (Site site = Site.withSample(directory)) {
            Set<String> english = englishPieces();
            Map<String, Set<String>> before = new TreeMap<>();
            visit(site, "/at/larkmoor/settings", new ArrayDeque<>(), english, before);
            assertThat(before)
                    .as("the same search finds English on an English page")
                    .isNotEmpty();
            speakGerman(site);
            Map<String, Set<String>> leftovers = new TreeMap<>();
            Set<String> seen = new TreeSet<>();
            Deque<String> next = new ArrayDeque<>(List.of("/at/larkmoor/bank"));
            while (!next.isEmpty() && seen.size() < MOST_PAGES) {
                String path = next.poll();
                if (seen.add(path.replaceAll("/journal/[0-9]+.*", "/journal/n"))) {
                    visit(site, path, next, english, leftovers);
                }
            }
            assertThat(seen).hasSizeGreaterThan(25);
            assertThat(leftovers).isEmpty();
        }
    }

    private void speakGerman(Site site) {
        Page settings = browser.get(URI.create(site.url("/at/larkmoor/settings")));
        Page saved = browser.submit(
                settings,
                settings.find("form[action$=/settings]"),
                Map.of("language", "de", "who", "Tom Reed", "people", "Iris Holm\nTom Reed"));
        assertThat(saved.find("html").attr("lang")).isEqualTo("de");
    }

    private void visit(
            Site site, String path, Deque<String> next, Set<String> english, Map<String, Set<String>> leftovers) {
        Page page = browser.get(URI.create(site.url(path)));
        page.document().select("body [lang=en]").remove();
        String text = page.document().body().text();
        Set<String> found = english.stream().filter(text::contains).collect(Collectors.toCollection(TreeSet::new));
        ENGLISH_WORD
                .matcher(text)
                .results()
                .map(word -> text.substring(Math.max(0, word.start() - 30), Math.min(text.length(), word.end() + 30)))
                .forEach(found::add);
        if (!found.isEmpty()) {
            leftovers.put(path, found);
        }
        for (Element link : page.document().select("a[href^=/at/larkmoor]")) {
            String target = link.attr("href");
            if (!target.matches(".*/papers/.+|.*/rules.*|.*\\.(ics|pdf|csv|jsonl?)(\\?.*)?|.*/data/.+")) {
                next.add(target);
            }
        }
    }

    private static Set<String> englishPieces() {
        Set<String> german = new TreeSet<>();
        Set<String> english = new TreeSet<>();
        for (Path file : MessageFiles.english()) {
            german.addAll(pieces(MessageFiles.in("de", file)));
            english.addAll(pieces(file));
        }
        english.removeIf(piece -> german.stream().anyMatch(other -> other.contains(piece)));
        return english;
    }

    private static Set<String> pieces(Path file) {
        return MessageFiles.texts(file).values().stream()
                .flatMap(text -> Arrays.stream(text.split("\\{[^}]*}")))
                .map(String::strip)
                .filter(piece -> piece.length() >= LONG_ENOUGH && piece.contains(" "))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
