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

    private static final Pattern DECIMAL_POINT = Pattern.compile("\\d\\.\\d");

    /** Addresses, and laws by their numbers. */
    private static final Pattern NO_NUMBER =
            Pattern.compile("https?://\\S+|\\b(CFR|AC|ADR) [0-9]+\\.[-0-9A-Z.]+(, [0-9]+\\.[0-9]+)*");

    private static final String PLAN =
            "/at/demo/fill/plan?bottle=demo-bottle-k1-front&before=62,5&target=180&temperature=17,5";

    /** Pages whose numbers come from a question, and where the walk begins. */
    private static final List<String> RESULTS = List.of(
            PLAN,
            "/at/demo/bank",
            "/at/demo/journal?skip=1050",
            "/at/demo/rent",
            "/at/demo/prices",
            "/at/demo/bottles/new",
            "/at/demo/bottles/demo-bottle-tug/stamp",
            "/at/demo/fill/time?bottle=demo-bottle-k1-front&before=62&target=180",
            "/at/demo/temperatures?reading=150,5&temperature=17,5&other=30",
            "/at/demo/forecast?lead=3&reserve=2",
            "/at/demo/session?bottle=demo-bottle-k1-front&bottle=demo-bottle-swift",
            "/at/demo/send-back?lead=3",
            "/at/demo/camp?days=4&pilots=6&fills=0,5&flyable=70&chance=90&volume=50+L&reading=200");

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
            speakGerman(site, "larkmoor", "Tom Reed", "Iris Holm\nTom Reed");
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

    /** Half a year of the demo bench: prices, bills, stamps, sizes, forecasts, a plan. Numbers of laws and addresses stay. */
    @Test
    void noPageOfAGermanBenchShowsADecimalPoint() {
        try (Site site = Site.withDemo(directory)) {
            Map<String, Set<String>> points = new TreeMap<>();
            for (String path : RESULTS) {
                readNumbers(browser.get(URI.create(site.url(path))), points);
            }
            assertThat(points)
                    .as("the same search finds points on English pages")
                    .hasSizeGreaterThan(3);
            speakGerman(site, "demo", "Wren", "Wren\nTobias\nIngrid\nOona\nRuben");
            points.clear();
            Set<String> seen = new TreeSet<>();
            Deque<String> next = new ArrayDeque<>(RESULTS);
            while (!next.isEmpty() && seen.size() < MOST_PAGES) {
                String path = next.poll();
                if (seen.add(path.replaceAll("/journal/[0-9]+.*", "/journal/n").replaceAll("demo-fill-[0-9]+", "f"))) {
                    Page page = browser.get(URI.create(site.url(path)));
                    readNumbers(page, points);
                    links(page, "demo", next);
                }
            }
            looksPlansAndStudies(site, points);
            assertThat(seen).hasSizeGreaterThan(60);
            assertThat(points).isEmpty();
        }
    }

    private void looksPlansAndStudies(Site site, Map<String, Set<String>> points) {
        Page look = browser.get(URI.create(site.url(PLAN)));
        Page plan = browser.submit(look, look.find("form[action$=/fill/look-over]"), Map.of("who", "Wren"));
        assertThat(plan.document().select("form[action$=/fill/start]")).isNotEmpty();
        readNumbers(plan, points);
        Page study = browser.get(URI.create(site.url("/at/demo/study")));
        Map<String, String> prices = Map.of(
                "largest", "3", "runs", "20", "years", "1", "content", "46,50", "delivery", "18,50", "rent", "0,25");
        Map<String, String> there = new TreeMap<>(prices);
        there.keySet()
                .removeIf(name -> study.document().select("[name=" + name + "]").isEmpty());
        readNumbers(browser.submit(study, study.find("form[action$=/study]"), there), points);
    }

    /** What people see as text, fields and words for screen readers included; sources are quoted as published. */
    private static void readNumbers(Page page, Map<String, Set<String>> points) {
        page.document()
                .select("body [lang=en], script, input[type=hidden], code, textarea.code")
                .remove();
        StringBuilder text = new StringBuilder(page.document().body().text());
        page.document()
                .select("input[value], [aria-label]")
                .forEach(element -> text.append(" | ")
                        .append(element.attr("value"))
                        .append(' ')
                        .append(element.attr("aria-label")));
        String without = NO_NUMBER.matcher(text).replaceAll(" ");
        Set<String> found = DECIMAL_POINT
                .matcher(without)
                .results()
                .map(point -> without.substring(
                        Math.max(0, point.start() - 30), Math.min(without.length(), point.end() + 20)))
                .collect(Collectors.toCollection(TreeSet::new));
        if (!found.isEmpty()) {
            points.put(page.address().getPath(), found);
        }
    }

    private static void links(Page page, String bench, Deque<String> next) {
        for (Element link : page.document().select("a[href^=/at/" + bench + "]")) {
            String target = link.attr("href");
            if (!target.matches(".*/papers/.+|.*/rules.*|.*\\.(ics|pdf|csv|jsonl?)(\\?.*)?|.*/data/.+")) {
                next.add(target);
            }
        }
    }

    private void speakGerman(Site site, String bench, String who, String people) {
        Page settings = browser.get(URI.create(site.url("/at/" + bench + "/settings")));
        Page saved = browser.submit(
                settings,
                settings.find("form[action$=/settings]"),
                Map.of("language", "de", "who", who, "people", people));
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
        links(page, "larkmoor", next);
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
