package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WithoutScriptsBrowserTest {

    @Test
    void theWholeOfAFillWorksWithoutScripts(@TempDir Path directory) {
        try (Site site = Site.withSample(directory);
                Visitor tom = Visitor.withoutScripts(site)) {
            tom.open("/");
            tom.sees("Bank");
            tom.press("Enter readings");
            tom.press("Save readings");
            tom.reads("need");
            assertThat(tom.page().url()).endsWith("/readings");
            Locator focused = tom.page().locator(":focus");
            assertThat(focused.getAttribute("aria-invalid")).isEqualTo("true");
            tom.press("Fill");
            tom.sees("Which bottle?");
            tom.page().locator("a.choice").first().click();
            tom.type("Bottle gauge shows", "40");
            tom.press("Show the plan");
            tom.reads("Fills left like this one");
            tom.choose("Entered by", "Tom Reed");
            tom.press("Start");
            tom.reads("Connect the bottle.");
            tom.press("Connected, all shut");
            tom.press("Bottle is open");
            tom.press("is open");
            tom.press("Gas is flowing");
            tom.press("It stands at");
            tom.press("Transfer is shut");
            tom.press("is shut");
            tom.reads("Read the gauges.");
            tom.press("Save and go on");
            tom.reads("Type the gauge reading");
            tom.type("Bottle gauge", "60");
            tom.press("Save and go on");
            tom.reads("Open supply B, slowly.");
            tom.open("/at/larkmoor/journal");
            tom.reads("From supply A to 60 bar");
            tom.reads("Tom Reed");
        }
    }
}
