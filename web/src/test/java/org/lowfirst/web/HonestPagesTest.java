package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** Spreads and verdicts on the pages where readings are looked at. */
final class HonestPagesTest {

    private static final int MINUTES_A_WEEK = 7 * 24 * 60;

    @TempDir
    Path directory;

    private final Browser browser = new Browser();
    private Site site;

    @BeforeEach
    void open() {
        site = Site.withSample(directory);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    private static Element tile(Page bank, String name) {
        return bank.document().select("li.supply").stream()
                .filter(tile -> tile.select("h2").text().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Types what one supply reads. */
    private void read(String supply, String bar, String celsius) {
        Page form = page("/readings");
        Map<String, String> typed = new HashMap<>(Map.of("who", "Tom Reed", "temperature", celsius));
        typed.put("reading-" + supply, bar);
        Page saved = browser.submit(form, form.find("form[action$=/readings]"), typed);
        assertThat(saved.status()).as(text(saved)).isEqualTo(200);
    }

    @Test
    void besideEachReadingStandsHowFarItMayBeOff() {
        Page bank = page("/bank");
        assertThat(tile(bank, "A").select(".reading").text()).matches("62 bar within [1-9]");
        assertThat(text(page("/readings"))).containsPattern("62 bar, within [1-9]");
        assertThat(text(page("/supplies/s-A")))
                .containsPattern("62 bar, within [1-9]")
                .contains("Nothing to compare yet");
    }

    /** 142 bar at 24 C, 127 at 9 C a week later, 118 at 21 C a week after that: to be watched, then a likely leak. */
    @Test
    void aSupplyThatReadsLessOnAWarmerDayIsALikelyLeakInWordsAndShape() {
        Page fresh = page("/supplies/new");
        Page connected = browser.submit(
                fresh,
                fresh.find("form[action$=/supplies/new]"),
                Map.of(
                        "name",
                        "D",
                        "volume",
                        "50",
                        "marked",
                        "200",
                        "reading",
                        "142",
                        "temperature",
                        "24",
                        "who",
                        "Tom Reed"));
        String id = Objects.requireNonNull(tile(connected, "D").selectFirst("a"))
                .attr("href")
                .replaceFirst(".*/", "");
        site.waitMinutes(MINUTES_A_WEEK);
        read(id, "127", "9");
        Page bank = page("/bank");
        assertThat(tile(bank, "D").select(".verdict.watch").text()).isEqualTo("watch: read again settled");
        site.waitMinutes(MINUTES_A_WEEK);
        read(id, "118", "21");
        assertThat(tile(page("/bank"), "D").select(".verdict.accuses").text()).isEqualTo("likely leak");
        Page supply = page("/supplies/" + id);
        assertThat(supply.find(".verdict path").attr("d")).isNotEmpty();
        assertThat(text(supply)).contains("118 bar", "Noise alone would look like this", "Close the valve");
    }

    @Test
    void thePlanSaysHowFarEachStageMayEndFromWhereItShould() {
        String plan = text(page("/fill/plan?bottle=m-03&before=40&target=150&temperature=20"));
        assertThat(plan)
                .containsPattern("gauges meet at 60 bar, within [1-9]")
                .containsPattern("gauges meet at 113 bar, within [1-9]")
                .contains("shut at 150 bar", "7, and an 8th to about 147 bar")
                .containsPattern("Fill 7 comes to its stop with a chance of \\d+ %\\.")
                .containsPattern("Fill 8 would come to 147 bar, within \\d+; to its stop with a chance of \\d+ %\\.");
    }

    @Test
    void afterAFillWhatLeftIsWeighedAgainstWhatArrived() {
        Page plan = page("/fill/plan?bottle=m-03&before=40&target=150&temperature=20");
        Page step = browser.submit(plan, plan.find("form[action$=/fill/start]"), Map.of("who", "Tom Reed"));
        String[][] stages = {{"60", "60"}, {"113", "113"}, {"150", "186"}};
        int done = 0;
        while (!step.address().getPath().endsWith("/done")) {
            Element act = step.document().selectFirst(".thumb a.act");
            if (act != null) {
                step = browser.follow(act);
                continue;
            }
            site.waitMinutes(4);
            Map<String, String> typed = done < stages.length
                    ? Map.of("bottle", stages[done][0], "supply", stages[done][1])
                    : Map.of("bottle", "150");
            done++;
            Page next = browser.submit(step, step.find("form.thumb"), typed);
            assertThat(next.status()).as(text(next)).isEqualTo(200);
            step = next;
        }
        assertThat(text(step)).contains("What left and what arrived", "left the supplies and", "entered bottles");
        assertThat(step.find(".verdict").text()).isEqualTo("inside gauge uncertainty");
        assertThat(text(page("/bottles/m-03"))).contains("by all its readings, settled");
    }
}
