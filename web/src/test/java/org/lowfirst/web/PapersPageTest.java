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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.web.Browser.Page;

/** Papers, asked for through their page. What is on them is tested where they are made. */
final class PapersPageTest {

    @TempDir
    Path directory;

    private final Browser browser = new Browser();
    private Site site;

    @BeforeEach
    void open() {
        site = Site.withSample(directory);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    private HttpResponse<byte[]> file(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(
                                        URI.create(site.url(path.startsWith("/at/") ? path : "/at/larkmoor" + path)))
                                .build(),
                        BodyHandlers.ofByteArray());
    }

    @ParameterizedTest
    @CsvSource({
        "bench-sheet, bench-sheet-larkmoor-gliders-",
        "supply-labels?size=letter, supply-labels-larkmoor-gliders-",
        "blank-log?size=a4, blank-log-larkmoor-gliders-",
        "emergency-card, emergency-card-larkmoor-gliders-",
        "bottle-tags?base=http://bench.example, bottle-tags-larkmoor-gliders-",
        "bottle-tags?base=http://bench.example&bottle=m-03, bottle-tags-larkmoor-gliders-"
    })
    void everyPaperComesAsPdfUnderItsName(String path, String name) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = file("/papers/" + path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/pdf");
        assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
                .startsWith("inline; filename=\"" + name)
                .endsWith(".pdf\"");
        assertThat(new String(answer.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    @Test
    void theAddressForTheCodesIsProposedAndThenKept() {
        Page proposed = page("/papers");
        assertThat(proposed.find("#tags input[name=base]").attr("value")).startsWith("http://127.0.0.1:");
        Page wrong = browser.submit(proposed, proposed.find("#address"), Map.of("base", "bench", "who", "Iris Holm"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.find("#base-fault").text()).contains("bench");
        assertThat(wrong.find("#address input[name=base]").attr("value")).isEqualTo("bench");
        Page kept = browser.submit(
                wrong, wrong.find("#address"), Map.of("base", "http://bench.example:8080/", "who", "Iris Holm"));
        assertThat(kept.status()).isEqualTo(200);
        assertThat(page("/papers").find("#tags input[name=base]").attr("value")).isEqualTo("http://bench.example:8080");
        assertThat(page("/journal").document().text())
                .contains("Other machines reach the program at http://bench.example:8080.");
    }

    @Test
    void theSizeUsualWhereTheRulesComeFromIsOfferedFirst() {
        assertThat(page("/papers")
                        .document()
                        .select("a[href*=bench-sheet]")
                        .eachText()
                        .get(0))
                .startsWith("A4");
    }

    @Test
    void anAddressThatNoOtherMachineCanOpenIsRefusedAndKept() {
        Page refused = page("/papers/bottle-tags?base=bench%20here&size=a4");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#base").attr("value")).isEqualTo("bench here");
        assertThat(refused.find("#base-fault").text()).contains("bench here is no address");
    }

    @Test
    void localNumbersAreKeptInTheJournal() {
        Page form = page("/papers");
        Page saved = browser.submit(
                form,
                form.find("#help"),
                Map.of("place", "Hangar 2", "who1", "Fire", "dial1", "00 00", "who", "Tom Reed"));
        assertThat(saved.status()).isEqualTo(200);
        assertThat(saved.find("#dial1").attr("value")).isEqualTo("00 00");
        assertThat(page("/journal").document().text()).contains("local numbers on it: 1");
    }

    @Test
    void aNameWithoutItsNumberIsAskedForAndNothingIsLost() {
        Page form = page("/papers");
        Page refused = browser.submit(
                form, form.find("#help"), Map.of("place", "Hangar 2", "who2", "Fire", "who", "Tom Reed"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#dial2-fault").text()).contains("Give the number");
        assertThat(refused.find("#place").attr("value")).isEqualTo("Hangar 2");
        assertThat(refused.find("#who2").attr("value")).isEqualTo("Fire");
    }

    @Test
    void aBottleLeadsToItsTag() {
        Page bottle = page("/bottles/m-03");
        Page papers = browser.follow(bottle.find("a[href*=papers]"));
        assertThat(papers.document().text()).contains("Only M-03");
    }

    @Test
    void aFillOfTheDemoIsPrintedByItsIdAndByAnyOfItsEntries() throws IOException, InterruptedException {
        Page start = browser.get(URI.create(site.url("/benches")));
        browser.submit(start, start.find("form[action$=/demo]"), Map.of());
        assertThat(file("/at/demo/papers/record-of/demo-fill-1").statusCode()).isEqualTo(200);
        assertThat(file("/at/demo/papers/record-of/demo-fill-1").headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(name -> assertThat(name).contains("fill-record-quillmere"));
        assertThat(file("/at/demo/papers/record-of/no-such-fill").statusCode()).isEqualTo(404);
        assertThat(file("/at/demo/papers/record-of/-").statusCode()).isEqualTo(404);
        Page journal = browser.get(URI.create(site.url("/at/demo/journal?group=fills")));
        Page entry = browser.follow(journal.find(".journal li a"));
        HttpResponse<byte[]> record = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(
                                        entry.find("a[href*=fill-record]").absUrl("href")))
                                .build(),
                        BodyHandlers.ofByteArray());
        assertThat(record.statusCode()).isEqualTo(200);
    }

    @Test
    void anEntryThatIsNoFillHasNoRecord() throws IOException, InterruptedException {
        assertThat(file("/papers/fill-record?entry=1").statusCode()).isEqualTo(404);
        assertThat(file("/papers/fill-record?entry=999").statusCode()).isEqualTo(404);
    }
}
