package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** A bench in another language, and in units each chosen by itself. */
final class LanguageAndUnitsTest {

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

    private Page set(Map<String, String> typed) {
        Page form = page("/settings");
        Map<String, String> all = new HashMap<>(Map.of("who", "Tom Reed", "people", "Iris Holm\nTom Reed"));
        all.putAll(typed);
        Page saved = browser.submit(form, form.find("form[action$=/settings]"), all);
        assertThat(saved.status()).isEqualTo(200);
        return saved;
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    @Test
    void aBenchSetToGermanSpeaksGerman() {
        Page saved = set(Map.of("language", "de"));
        assertThat(saved.find("html").attr("lang")).isEqualTo("de");
        assertThat(saved.find("nav[aria-label]").text()).contains("Batterie", "Flaschen");
        assertThat(text(page("/journal"))).contains("Einstellungen").doesNotContain("Settings changed");
        Page refused = page("/fill/plan?bottle=m-03&before=40&target=30&temperature=");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#target-fault").text()).isNotEmpty().doesNotContain("target");
        Page plan = page("/fill/plan?bottle=m-03&before=40&target=150&temperature=");
        assertThat(text(plan)).doesNotContain("Open supply", "Fills left");
        assertThat(page("/nowhere").find("html").attr("lang")).isEqualTo("en");
        assertThat(page("/bottles/none").find("html").attr("lang")).isEqualTo("de");
    }

    @Test
    void aBrowserThatAsksForGermanSetsABenchUpInGerman() throws IOException, InterruptedException {
        Document asked = asking("de-AT,de;q=0.9,en;q=0.5");
        assertThat(asked.select("html").attr("lang")).isEqualTo("de");
        assertThat(asked.select("#language option[selected]").text()).isEqualTo("Deutsch");
        assertThat(asking("fr-CH, en;q=0.9, de;q=0.8").select("html").attr("lang"))
                .isEqualTo("en");
        assertThat(asking("fi").select("html").attr("lang")).isEqualTo("en");
    }

    private Document asking(String languages) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(site.url("/new")))
                .header("Accept-Language", languages)
                .build();
        return Jsoup.parse(HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofString())
                .body());
    }

    @Test
    void eachUnitCanBeChosenByItself() {
        set(Map.of("units", "own", "unit-pressure", "kPa", "unit-temperature", "F", "unit-gas", "cu ft"));
        assertThat(page("/settings").find("input[name=units][checked]").attr("value"))
                .isEqualTo("own");
        assertThat(text(page("/bank"))).contains("6,200 kPa", "cu ft").doesNotContain("psi");
        Page plan = page("/fill/plan?bottle=m-03&before=4000&target=15000&temperature=68");
        assertThat(plan.status()).isEqualTo(200);
        assertThat(text(plan)).contains("15,000", "kPa");
        Page readings = page("/readings");
        assertThat(readings.find("label[for=temperature]").text()).contains("F");
    }

    @Test
    void inGermanThousandsAreSetApartByASpaceAndDecimalsByAComma() {
        set(Map.of("language", "de", "units", "own", "unit-pressure", "kPa", "unit-temperature", "C", "unit-gas", "L"));
        assertThat(text(page("/bank"))).contains("6\u202f200").doesNotContain("6,200", "6.200");
    }

    @Test
    void numbersInAnotherUnitAreAskedAboutInKilopascals() {
        set(Map.of("units", "own", "unit-pressure", "kPa", "unit-temperature", "C", "unit-gas", "L"));
        Page bottle = page("/bottles/new");
        browser.submit(
                bottle,
                bottle.find("form[action$=/bottles/new]"),
                Map.of("name", "R-1", "volume", "5", "marked", "20000", "who", "Tom Reed"));
        String id = page("/bottles").document().select("h2 a").stream()
                .filter(link -> link.text().equals("R-1"))
                .map(link -> link.attr("href").replaceFirst(".*/", ""))
                .findFirst()
                .orElseThrow();
        Page reading = page("/ready/read?bottle=" + id);
        Page asked = browser.submit(
                reading, reading.find("form[action$=/ready/read]"), Map.of("reading", "60", "who", "Tom Reed"));
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.find("#reading-fault").text())
                .contains("60 kPa is next to nothing for R-1, marked 20000 kPa.");
        Page insisted = browser.submit(
                asked, asked.find("form[action$=/ready/read]"), Map.of("who", "Tom Reed", "confirmed", "yes"));
        assertThat(insisted.status()).isEqualTo(200);
        assertThat(text(page("/journal"))).contains("Bottle R-1 read 60 kPa.");
    }

    @Test
    void kilopascalsInABarFieldAreRecognised() {
        Page plan = page("/fill/plan?bottle=m-03&before=4000&target=15000&temperature=");
        assertThat(plan.status()).isEqualTo(422);
        assertThat(plan.find("#target-fault").text())
                .isEqualTo("15000 bar is more than any cylinder here can hold. If it is kPa, type 15000 kPa.");
        assertThat(plan.find("#before-fault").text()).contains("If it is psi, type 4000 psi.");
    }
}
