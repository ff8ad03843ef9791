package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/**
 * Any reading at any temperature. Expected: 200 bar full at 15 C reads 161 at -20 C, 184 at 0 C, 206 at 20 C, 227 at 40 C, computed
 * with the oxygen equation of Schmidt and Wagner as coded in CoolProp 8.0.0.
 */
final class TemperaturesPageTest {

    private final Browser browser = new Browser();

    private Page page(Site site, String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    @Test
    void aReadingIsShownAtTheTemperaturesOfTheYear(@TempDir Path directory) {
        try (Site site = Site.withSample(directory)) {
            Page page = page(site, "/temperatures?cylinder=b.m-03&reading=200&temperature=15&to=2");
            String text = page.document().body().text();
            assertThat(text).contains("200 bar at 15 C is the same gas as:", "100 % full");
            assertThat(page.document().select("tbody tr").eachText())
                    .contains("-20 C 161 bar 161 bar", "0 C 184 bar 184 bar", "40 C 227 bar 227 bar")
                    .anyMatch(row -> row.startsWith("2 C 186 bar"));
        }
    }

    @Test
    void aCylinderBringsItsLatestReadingAlong(@TempDir Path directory) {
        try (Site site = Site.withSample(directory)) {
            Page bottle = page(site, "/bottles/m-03");
            Page ask = browser.follow(bottle.find("a[href*=/temperatures]"));
            assertThat(ask.find("#reading").attr("value")).isEqualTo("40");
            Page shown = browser.submit(ask, ask.find("form"), Map.of());
            assertThat(shown.document().body().text()).containsPattern("It holds 2\\d0 L: \\d+ % full");
        }
    }

    @Test
    void whatCannotBeComputedIsRefusedAndKept(@TempDir Path directory) {
        try (Site site = Site.withSample(directory)) {
            Page page = page(site, "/temperatures?reading=150&temperature=-200");
            assertThat(page.status()).isEqualTo(422);
            assertThat(page.find("#temperature-fault").text()).contains("-200 C");
            assertThat(page.find("#temperature").attr("value")).isEqualTo("-200");
            assertThat(page(site, "/temperatures?reading=much").find("#reading").attr("value"))
                    .isEqualTo("much");
        }
    }
}
