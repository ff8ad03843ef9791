package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job with the keyboard alone: every act is reached by Tab, shows where it is, and works by Enter. */
final class KeyboardBrowserTest {

    private static final int MOST_STOPS = 40;

    @Test
    void aFillIsPlannedAndStartedByKeyboardAlone(@TempDir Path directory) {
        try (Site site = Site.withSample(directory);
                Visitor iris = Visitor.at(site, 1280, 900)) {
            iris.open("/");
            iris.page().keyboard().press("Tab");
            assertThat(focused(iris.page())).isEqualTo("Skip to the page");
            tabTo(iris.page(), "Fill a bottle");
            iris.page().keyboard().press("Enter");
            iris.sees("Which bottle?");
            tabTo(iris.page(), iris.page().locator("a.choice").first().innerText());
            iris.page().keyboard().press("Enter");
            iris.page().waitForURL("**/fill/plan?**");
            tabToField(iris.page(), "before");
            iris.page().keyboard().type("30");
            iris.page().keyboard().press("Enter");
            iris.reads("Fills left like this one");
            tabToField(iris.page(), "who");
            iris.page().keyboard().press("ArrowDown");
            tabTo(iris.page(), "Start");
            iris.page().keyboard().press("Enter");
            iris.reads("Connect the bottle.");
            tabTo(iris.page(), "Connected, all shut");
            iris.page().keyboard().press("Enter");
            iris.reads("Open the bottle's valve.");
            PlaywrightAssertions.assertThat(iris.page().locator("h1")).isFocused();
        }
    }

    private static void tabTo(Page page, String words) {
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            if (focused(page).equals(words)) {
                assertThat(page.evaluate("getComputedStyle(document.activeElement).outlineStyle"))
                        .as("outline of " + words)
                        .isEqualTo("solid");
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("Tab never came to " + words);
    }

    private static void tabToField(Page page, String name) {
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            if (name.equals(page.evaluate("document.activeElement.getAttribute('name')"))) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("Tab never came to " + name);
    }

    private static String focused(Page page) {
        return (String) page.evaluate("document.activeElement.innerText || ''");
    }
}
