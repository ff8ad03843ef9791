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

/**
 * The plan page against worked cases.
 *
 * <p>Source of the expected numbers: real oxygen by CoolProp 8.0.0, isothermal, gauge pressures, atmosphere 1.013 bar.
 */
final class PlanPageReferenceTest {

    /** At 15 C: P 44 to 40.0, Q 97 to 87.7, R 131 to 123.8; 150 is missed by 26; the lowest is to be exchanged. */
    @Test
    void aBankThatCannotReachSaysSoBeforeAnythingIsOpened(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSampleThatCannotReach(directory)) {
            assertThat(page(site, "/at/larkmoor/fill/plan?bottle=w-10&before=20&target=150"))
                    .contains("only gets to", "124")
                    .contains("Wanted 150 bar; the bank brings it to 124 bar, 26 bar short.")
                    .contains("gauges meet at 40 bar", "gauges meet at 88 bar", "gauges meet at 124 bar")
                    .contains("Exchange P, which would leave with 44 bar. With a full one it finishes.")
                    .contains("Fill to 123 bar instead")
                    .contains("1,110 L, counted at 15 C, 1.013 bar");
        }
    }

    /** A target above the mark: the plan stops at the mark and says why. */
    @Test
    void aTargetAboveTheMarkIsCappedAndSaid(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSample(directory)) {
            assertThat(page(site, "/at/larkmoor/fill/plan?bottle=m-03&before=40&target=220"))
                    .contains("Asked for 220 bar. It stops at 200 bar: the marked service pressure.");
        }
    }

    /** At 2 C a bottle marked 200 bar at 15 C reads 186 when full (CoolProp 8.0.0). */
    @Test
    void aColdBenchStopsBelowTheMarkAndSaysWhy(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSample(directory)) {
            assertThat(page(site, "/at/larkmoor/fill/plan?bottle=m-03&before=40&target=200&temperature=2"))
                    .contains("Asked for 200 bar. It stops at 186 bar: it is colder here");
        }
    }

    @Test
    void whatIsReadAboveEverySupplyIsSaidToTakeNothing(@TempDir Path directory) throws Exception {
        try (Site site = Site.withSample(directory)) {
            assertThat(page(site, "/at/larkmoor/fill/plan?bottle=m-03&before=195&target=200"))
                    .contains("No supply is above this bottle. Nothing would flow.")
                    .doesNotContain(">Start<");
        }
    }

    private static String page(Site site, String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(site.url(path))).build(), HttpResponse.BodyHandlers.ofString())
                .body()
                .replaceAll("\\s+", " ");
    }
}
