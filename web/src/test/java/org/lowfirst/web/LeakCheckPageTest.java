package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** A timed leak check through its pages; limits of AC 43.13-1B Chg 1, 9-50b: 5 min, 1 hour, 100 psi, less than 10 F. */
final class LeakCheckPageTest {

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

    private Page begun(String bar, String celsius, String still) {
        Page form = page("/leak-check?cylinder=s.s-C");
        return browser.submit(
                form,
                form.find("form[action$=/leak-check]"),
                Map.of("reading", bar, "temperature", celsius, "still", still, "who", "Tom Reed"));
    }

    private Page ended(Page hold, String bar, String celsius) {
        return browser.submit(
                hold,
                hold.find("form[action*=/leak-check/hold]"),
                Map.of("reading", bar, "temperature", celsius, "who", "Tom Reed"));
    }

    private void describeAFineGauge() {
        Page form = page("/gauges/one");
        browser.submit(
                form,
                form.find("form[action$=/gauges/one]"),
                Map.of("name", "Fine", "scale", "250", "division", "0.5", "error", "0.5", "who", "Tom Reed"));
    }

    @Test
    void aColderHourIsNoLeakAndADropBeyondTheLimitIs() {
        describeAFineGauge();
        site.waitMinutes(1);
        Page hold = begun("190", "20", "10");
        assertThat(text(hold))
                .contains("190 bar at 20 C", "Leave it alone until", "AC 43.13-1B")
                .containsPattern("6[01] min to go");
        site.waitMinutes(61);
        Page passed = ended(hold, "188", "17");
        assertThat(passed.find(".verdict").text()).isEqualTo("passed");
        assertThat(text(passed)).contains("with the temperature taken out");
        Page second = begun("188", "17", "10");
        site.waitMinutes(61);
        Page failed = ended(second, "176", "17");
        assertThat(failed.find(".verdict.accuses").text()).isEqualTo("failed");
        assertThat(text(page("/journal"))).contains("Supply C read 176 bar.");
    }

    @Test
    void conditionsThatWereNotKeptAreNamed() {
        Page hold = begun("190", "20", "1");
        site.waitMinutes(20);
        Page none = ended(hold, "190", "20");
        assertThat(none.find(".verdict.watch").text()).isEqualTo("no check");
        assertThat(text(none)).contains("It must stand for 5 minutes", "It must be held for 60 minutes");
    }

    @Test
    void whatIsMissingIsAskedForBesideItsField() {
        Page form = page("/leak-check");
        Map<String, String> typed = new HashMap<>(Map.of("reading", "190", "who", "Tom Reed"));
        Page refused = browser.submit(form, form.find("form[action$=/leak-check]"), typed);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#cylinder-fault").text()).contains("Choose the cylinder");
        assertThat(refused.find("#temperature-fault").text()).contains("thermometer");
        assertThat(refused.find("#still-fault").text()).contains("minutes");
        assertThat(refused.find("#reading").attr("value")).isEqualTo("190");
    }

    @Test
    void readingsTakenTheWrongWayRoundAreRefused() {
        Page hold = begun("190", "20", "10");
        site.waitMinutes(61);
        Page end = ended(hold, "190", "20");
        String swapped = end.address().getQuery().replaceAll("saved=\\d+", "");
        String first = swapped.replaceAll(".*first=(\\d+).*", "$1");
        String second = swapped.replaceAll(".*second=(\\d+).*", "$1");
        String since = swapped.replaceAll(".*since=([^&]+).*", "$1");
        Page refused = page("/leak-check/hold?since=" + since + "&first=" + second + "&second=" + first);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("must be later than the first");
    }
}
