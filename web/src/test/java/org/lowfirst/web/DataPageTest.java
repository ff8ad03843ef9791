package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** Tables and journals out, journals and bottles in, through their pages. */
final class DataPageTest {

    @TempDir
    Path directory;

    private final Browser browser = new Browser();
    private Site site;

    @BeforeEach
    void open() {
        site = Site.withSample(directory.resolve("one"));
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    private HttpResponse<String> file(Site from, String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(from.url("/at/larkmoor" + path)))
                                .build(),
                        BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    @Test
    void everyTableIsOfferedAndComesAsCsv() throws IOException, InterruptedException {
        var links = page("/data").document().select("a[href*=/data/tables/]").eachAttr("href");
        assertThat(links).hasSize(6);
        for (String link : links) {
            HttpResponse<String> csv = file(site, link.substring("/at/larkmoor".length()));
            assertThat(csv.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
            assertThat(csv.headers().firstValue("Content-Disposition").orElse(""))
                    .matches("attachment; filename=\"[a-z0-9-]+\\.csv\"");
            assertThat(csv.body()).endsWith("\r\n");
        }
        assertThat(file(site, "/data/tables/bottles").body())
                .startsWith("id,name,owner,water volume [L],")
                .contains("m-03,M-03,Nora Vale,5,stamped,,200,,150,\r\n");
        assertThat(file(site, "/data/tables/secrets").statusCode()).isEqualTo(404);
    }

    @Test
    void aJournalTakenOutIsCheckedAndThenImportedElsewhereByteByByte() throws IOException, InterruptedException {
        String journal = file(site, "/data/journal").body();
        try (Site other = Site.withSampleThatCannotReach(directory.resolve("two"))) {
            // The bench has the same id there and another history: the two cannot be joined.
            Browser elsewhere = new Browser();
            Page refused = elsewhere.send(
                    elsewhere.get(URI.create(other.url("/at/larkmoor/data"))), "/data/check", Map.of(), journal);
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.document().text()).contains("nothing was imported", "went different ways");
        }
        Page checked = browser.send(page("/data"), "/data/check", Map.of(), journal);
        assertThat(checked.status()).isEqualTo(200);
        assertThat(checked.document().text())
                .contains("Checked; nothing is imported yet.", "0 entries new, 7 already here");
        Page done = browser.submit(checked, checked.find("form[action$=/data/import]"), Map.of());
        assertThat(done.document().text()).contains("Imported.");
        assertThat(file(site, "/data/journal").body()).isEqualTo(journal);
        Page again = browser.submit(checked, checked.find("form[action$=/data/import]"), Map.of());
        assertThat(again.document().text()).contains("The checked file is no longer here.");
    }

    @Test
    void aFileThatIsNoJournalSaysWhichLineIsWrong() {
        Page refused = browser.send(page("/data"), "/data/check", Map.of(), "{\"format\":\n");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.document().text()).contains("Line 1:");
        Page none = browser.send(page("/data"), "/data/check", Map.of(), "");
        assertThat(none.find("#file-fault").text()).isEqualTo("Choose the file first.");
    }

    @Test
    void pastedBottlesAreLookedAtCorrectedInPlaceAndEnteredAllAtOnce() {
        Page form = page("/bottles/many");
        Page rows = browser.send(
                form,
                "/bottles/many",
                Map.of(
                        "pasted",
                        "Flasche;Rauminhalt (L);Fülldruck (bar);Farbe\nM-04;4,6;200;weiß\nM-05;5;;rot\nm-03;5;200;\n"),
                "");
        assertThat(rows.status()).isEqualTo(200);
        assertThat(rows.document().text())
                .contains("2 of 3 rows need correcting.", "Not recognised, so left out: Farbe");
        assertThat(rows.find("#r1-marked-fault").text()).contains("Give the pressure marked");
        assertThat(rows.find("#r2-name-fault").text()).contains("m-03");
        Page still =
                browser.submit(rows, rows.find("form[action$=/enter]"), Map.of("r1-marked", "300", "who", "Tom Reed"));
        assertThat(still.status()).isEqualTo(422);
        assertThat(still.find("input[name=r1-marked]").attr("value")).isEqualTo("300");
        Page entered =
                browser.submit(still, still.find("form[action$=/enter]"), Map.of("r2-name", "M-06", "who", "Tom Reed"));
        assertThat(entered.status()).isEqualTo(200);
        assertThat(entered.document().text()).contains("M-04", "M-05", "M-06");
        Page twice =
                browser.submit(still, still.find("form[action$=/enter]"), Map.of("r2-name", "M-06", "who", "Tom Reed"));
        assertThat(twice.document().select("h2").eachText())
                .filteredOn("M-06"::equals)
                .hasSizeLessThan(2);
    }

    @Test
    void aTableSentAsAFileIsReadAndARowMayBeLeftOut() {
        Page rows = browser.send(
                page("/bottles/many"), "/bottles/many", Map.of(), "name,volume,marked\nX-1,5,200\nX-2,5,200\n");
        Page entered =
                browser.submit(rows, rows.find("form[action$=/enter]"), Map.of("r0-out", "yes", "who", "Tom Reed"));
        assertThat(entered.document().text()).contains("X-2").doesNotContain("X-1");
    }

    @Test
    void whatCannotBeReadStaysInTheField() {
        Page refused = browser.send(page("/bottles/many"), "/bottles/many", Map.of("pasted", "colour\nred\n"), "");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#pasted").text()).contains("colour");
        assertThat(refused.find("#pasted-fault").text()).contains("name or bottle");
    }
}
