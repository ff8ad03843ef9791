package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/**
 * A new supply is what it reads. 50 L delivered at 148 bar and 6 C where a full one would read 190: about 2,350 L short, 22 %; computed
 * with the oxygen equation of Schmidt and Wagner as coded in CoolProp 8.0.0.
 */
final class DeliveryPageTest {

    private final Browser browser = new Browser();

    private Page connected(Site site, String reading, String celsius) {
        Page form = browser.get(URI.create(site.url("/at/larkmoor/supplies/new")));
        return browser.submit(
                form,
                form.find("form[action$=/supplies/new]"),
                Map.of(
                        "name",
                        "P2",
                        "serial",
                        "LM 0044",
                        "volume",
                        "50",
                        "marked",
                        "200",
                        "reading",
                        reading,
                        "temperature",
                        celsius,
                        "who",
                        "Tom Reed"));
    }

    @Test
    void aSupplyThatCameShortIsRankedByItsReadingAndGetsANote(@TempDir Path directory) {
        try (Site site = Site.withSampleThatCannotReach(directory)) {
            Page bank = connected(site, "148", "6");
            String said = bank.find("section.know").text();
            assertThat(said)
                    .containsPattern(
                            "P2 came short by 2,3[3-7]0 L \\(22 %\\): it reads 148 bar, a full one would read 190 bar\\.")
                    .contains("By what it reads it is number 4 of 4");
            Page note = browser.follow(bank.find("section.know a"));
            assertThat(note.document().body().text())
                    .contains("Note for the supplier", "serial LM 0044", "148 bar at 6 C", "(22 %)");
        }
    }

    @Test
    void aSupplyThatCameFullIsNotTalkedAbout(@TempDir Path directory) {
        try (Site site = Site.withSampleThatCannotReach(directory)) {
            Page bank = connected(site, "190", "6");
            assertThat(bank.document().select("section.know")).isEmpty();
            Page supply = browser.follow(bank.find("li.supply:last-child h2 a"));
            Page note = browser.follow(supply.find("a[href$=/delivery]"));
            assertThat(note.document().body().text()).contains("P2 came full as far as the gauge can tell");
        }
    }
}
