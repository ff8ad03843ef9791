package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fill on a clock, as the page shows it. */
final class TimePageTest {

    @Test
    void theWholeFillIsOnAClockWithHeatAndPaces(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSample(directory)) {
            String page = get(site, "&before=40&target=150&rate=13.7").body();
            assertThat(page)
                    .contains("supply A", "supply B", "supply C", "change over")
                    .contains("Gentler or faster", "13.7 bar a minute")
                    .contains("The mass of the wall is assumed")
                    .doesNotContain("style=");
            int gentle = page.indexOf("3.4 bar a minute");
            assertThat(page.indexOf("27.4 bar a minute")).isGreaterThan(gentle).isPositive();
        }
    }

    @Test
    void aRiseThatCannotBeIsRefusedAndKept(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSample(directory)) {
            HttpResponse<String> zero = get(site, "&before=40&target=150&rate=0");
            assertThat(zero.statusCode()).isEqualTo(422);
            assertThat(zero.body()).contains("The rise must be above zero.", "value=\"0\"");
            HttpResponse<String> wrong = get(site, "&before=40&target=150&rate=fast");
            assertThat(wrong.statusCode()).isEqualTo(422);
            assertThat(wrong.body()).contains("value=\"fast\"");
        }
    }

    /** Theory beside the caution: about 790 C for 190 bar snapped into a dead end at 20 C; the figure itself is checked in the planning module. */
    @Test
    void thePlanSaysWhyValvesAreOpenedSlowly(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSample(directory)) {
            HttpResponse<String> plan = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(
                                            site.url("/at/larkmoor/fill/plan?bottle=m-03&before=40&target=150")))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
            assertThat(plan.body()).contains("Why slowly?", "190 bar let in at once against a dead end gets to");
        }
    }

    private static HttpResponse<String> get(Site site, String query) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(site.url("/at/larkmoor/fill/time?bottle=m-03" + query)))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }
}
