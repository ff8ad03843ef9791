package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class LostLinkBrowserTest {

    @Test
    void whatWasTypedStaysWhenTheLinkIsLostAndIsEnteredOnce(@TempDir Path directory) {
        try (Site site = Site.withSample(directory);
                Visitor iris = Visitor.at(site, 360, 740)) {
            iris.open("/");
            iris.sees("Bank");
            iris.press("Enter readings");
            iris.sees("Readings");
            iris.type("1 · A", "70");
            iris.choose("Entered by", "Iris Holm");
            iris.link(false);
            iris.press("Save readings");
            iris.reads("No link to the bench.");
            assertThat(iris.page().getByLabel("1 · A").inputValue()).isEqualTo("70");
            iris.link(true);
            iris.press("Save readings");
            iris.reads("Saved as entry");
            iris.press("Journal");
            iris.sees("Journal");
            assertThat(iris.page().getByText("Supply A read 70 bar").count()).isEqualTo(1);
        }
    }
}
