package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** A bench set up from nothing: settings, one supply, bottles from a spreadsheet, and what is said to be next each time. */
final class FirstDayTest {

    private final Browser browser = new Browser();

    @Test
    void theStepsLeadFromNothingToTheFirstFill(@TempDir Path directory) {
        try (Site site = Site.over(directory)) {
            Page form = browser.get(URI.create(site.url("/new")));
            Page bank = browser.submit(
                    form,
                    form.find("form[action$=/new]"),
                    Map.of("name", "Larkmoor Gliders", "people", "Iris Holm", "full", "200", "temperature", "15"));
            assertThat(bank.status()).as(bank.document().text()).isEqualTo(200);
            Page steps = browser.follow(bank.find("a[href$=/first-day]"));
            assertThat(steps.find("a.act").text()).isEqualTo("Connect a supply");

            Page supply = browser.follow(steps.find("a.act"));
            browser.submit(
                    supply,
                    supply.find("form[action$=/supplies/new]"),
                    Map.of("name", "A", "volume", "50", "marked", "200", "reading", "190", "who", "Iris Holm"));
            Page second = browser.get(steps.address());
            assertThat(second.document().text()).contains("1 supply is connected.");
            assertThat(second.find("a.act").text()).isEqualTo("Paste them from a spreadsheet");

            Page paste = browser.follow(second.find("a.act"));
            Page rows = browser.send(
                    paste,
                    "/bottles/many",
                    Map.of("pasted", "Name\tVolume\tMarked\nM-03\t5\t200\nM-04\t4,6\t200\n"),
                    "");
            Page bottles = browser.submit(rows, rows.find("form[action$=/enter]"), Map.of("who", "Iris Holm"));
            assertThat(bottles.document().text()).contains("M-03", "M-04");
            Page third = browser.get(steps.address());
            assertThat(third.document().text()).contains("2 bottles are in the register.");
            assertThat(third.find("a.act").text()).isEqualTo("Describe a gauge");
        }
    }
}
