package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session led through on a phone. */
final class GuidedSessionBrowserTest {

    private static final String PLAN = "/at/larkmoor/session?in-m-03=yes&reading-m-03=40&target-m-03=150&floor-m-03="
            + "&priority-m-03=1&in-m-11=yes&reading-m-11=60&target-m-11=150&floor-m-11=&priority-m-11=1&plan=1";

    @TempDir
    private Path directory;

    @Test
    void aPhoneShowsTheOneNextActAndTheStepsOfTheFirstBottle() {
        try (Site site = Site.withSampleOfTwoBottles(directory);
                Visitor visitor = Visitor.at(site, 360, 740)) {
            visitor.open(PLAN);
            visitor.choose("Entered by", "Iris Holm");
            visitor.press("Fill this session");
            visitor.sees("Session");
            visitor.reads("on the hose and read its gauge");
            visitor.findsNothingInTheWay();
            visitor.findsTargetsLargeEnough();
            String reading = visitor.text().contains("Put M-03") ? "40" : "60";
            visitor.type("Bottle gauge shows", reading);
            visitor.press("On the hose, shut");
            visitor.reads("Connect");
            visitor.open("/at/larkmoor/session/now");
            visitor.reads("which is on the hose");
            visitor.findsNothingInTheWay();
            assertThat(visitor.text()).doesNotContain("planned again");
            visitor.open("/at/larkmoor/settings");
            visitor.choose("Language", "Deutsch");
            visitor.page().locator("form button.act").first().click();
            visitor.page().waitForURL(url -> !url.endsWith("/settings"));
            visitor.page().waitForLoadState();
            visitor.open("/at/larkmoor/session/now");
            visitor.sees("Füllrunde");
            visitor.findsNothingInTheWay();
        }
    }
}
