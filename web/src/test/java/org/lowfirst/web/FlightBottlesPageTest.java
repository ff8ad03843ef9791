package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** Which of two bottles are filled for a flight, and whether the bank can fill one after the other. */
final class FlightBottlesPageTest {

    @TempDir
    static Path directory;

    private static Site site;
    private final Browser browser = new Browser();

    @BeforeAll
    static void open() {
        site = Site.withSampleOfTwoBottles(directory);
    }

    @AfterAll
    static void close() {
        site.close();
    }

    @Test
    void bottlesThatCoverTheFlightTogetherStayAsTheyAre() {
        String text = flown("190", "20", "");
        assertThat(text).contains("Covered", "M-11: reads 20 bar", "It can stay as it is");
        assertThat(text).doesNotContain("It must read at least");
    }

    @Test
    void theBankIsAskedForOneAfterTheOther() {
        assertThat(flown("20", "20", "")).contains("Not covered", "The bank", "After the one before, the bank");
    }

    @Test
    void theFillIsAskedForAtTheTemperatureOfTheFlight() {
        Page page = page("20", "20", "-5");
        Element link = page.find("a[href*='/fill/plan?bottle=m-03']");
        assertThat(link.attr("href")).contains("&temperature=-5");
        Page plan = browser.get(URI.create(site.url(link.attr("href"))));
        assertThat(plan.status()).isEqualTo(200);
    }

    private String flown(String first, String second, String temperature) {
        return page(first, second, temperature).document().text();
    }

    private Page page(String first, String second, String temperature) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("profile", "0:00 1200\n0:57 16500 climb\n4:17 16500\n4:57 1200 home");
        typed.put("bottle-1", "m-03");
        typed.put("reading-1", first);
        typed.put("bottle-2", "m-11");
        typed.put("reading-2", second);
        typed.put("temperature", temperature);
        Page form = browser.get(URI.create(site.url("/at/larkmoor/flight")));
        return browser.submit(form, form.find("form[action$=/flight]"), typed);
    }
}
