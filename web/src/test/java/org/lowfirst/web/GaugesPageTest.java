package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** Gauges, described and taken out of use through their pages. */
final class GaugesPageTest {

    private static final Map<String, String> PANEL = Map.of(
            "name",
            "Panel",
            "use",
            "supplies",
            "unit",
            "bar",
            "scale",
            "160",
            "division",
            "2",
            "class",
            "1,6",
            "who",
            "Tom Reed");

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

    private Page described(Map<String, String> typed) {
        Page form = page("/gauges/one");
        return browser.submit(form, form.find("form[action$=/gauges/one]"), typed);
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    @Test
    void aBenchWithoutDescribedGaugesSaysWhatItAssumes() {
        assertThat(text(page("/gauges")))
                .contains("Nobody described the gauge on supplies", "at most 5 bar", "assumed");
        assertThat(text(page("/bench"))).contains("What each dial is");
    }

    @Test
    void aDescribedGaugeIsListedWithWhatItsDialSays() {
        Page list = described(PANEL);
        assertThat(list.status()).isEqualTo(200);
        assertThat(text(list)).contains("Gauge Panel: scale to 160 bar, error of at most 3 bar.", "On supplies");
        Page again = browser.follow(list.find("h2 a"));
        assertThat(again.find("input[name=class]").attr("value")).isEqualTo("1.6");
        Page better = browser.submit(
                again,
                again.find("form[action$=/gauges/one]"),
                Map.of("class", "0.6", "calibrated", "2026-03-14", "who", "Tom Reed"));
        assertThat(text(better)).contains("calibrated 2026-03-14");
    }

    @Test
    void aReadingAboveFullScaleIsRefusedBesideItsFieldAndKept() {
        described(PANEL);
        Page readings = page("/readings");
        String field = readings.document().select("label").stream()
                .filter(label -> label.text().contains("· C"))
                .map(label -> label.attr("for"))
                .findFirst()
                .orElseThrow();
        Page refused = browser.submit(
                readings, readings.find("form[action$=/readings]"), Map.of(field, "188", "who", "Tom Reed"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#" + field + "-fault").text())
                .isEqualTo("188 bar is above the full scale of gauge Panel, 160 bar. Read it again, or say which gauge"
                        + " it was.");
        assertThat(refused.find("#" + field).attr("value")).isEqualTo("188");
    }

    @Test
    void aSpareGaugeCanBeNamedForAReading() {
        described(PANEL);
        assertThat(page("/readings").document().select("#gauge")).isEmpty();
        described(Map.of(
                "name",
                "Spare",
                "use",
                "spare",
                "unit",
                "bar",
                "scale",
                "315",
                "division",
                "1",
                "class",
                "0.6",
                "who",
                "Tom Reed"));
        Page readings = page("/readings");
        String field = readings.document().select("label").stream()
                .filter(label -> label.text().contains("· C"))
                .map(label -> label.attr("for"))
                .findFirst()
                .orElseThrow();
        Page saved = browser.submit(
                readings,
                readings.find("form[action$=/readings]"),
                Map.of(field, "188", "gauge", "Spare", "who", "Tom Reed"));
        assertThat(saved.status()).as(text(saved)).isEqualTo(200);
        assertThat(text(page("/journal"))).contains("Supply C read 188 bar.");
    }

    @Test
    void aNewSupplyAndABottleCannotReadMoreThanTheirGaugesHold() {
        described(PANEL);
        Page fresh = page("/supplies/new");
        Page refused = browser.submit(
                fresh,
                fresh.find("form[action$=/supplies/new]"),
                Map.of("name", "D", "volume", "50", "marked", "200", "reading", "188", "who", "Tom Reed"));
        assertThat(refused.find("#reading-fault").text()).contains("full scale of gauge Panel");
        described(Map.of(
                "name",
                "Whip",
                "use",
                "bottles",
                "unit",
                "bar",
                "scale",
                "100",
                "division",
                "2",
                "error",
                "2",
                "who",
                "Tom Reed"));
        Page plan = page("/fill/plan?bottle=m-03&before=120&target=150&temperature=");
        assertThat(plan.status()).isEqualTo(422);
        assertThat(plan.find("#before-fault").text()).contains("full scale of gauge Whip, 100 bar");
        assertThat(plan.find("#before").attr("value")).isEqualTo("120");
    }

    @Test
    void whatCannotBeADialIsRefusedInPlainWordsAndKept() {
        Page both = described(
                Map.of("name", "G", "scale", "160", "division", "2", "class", "1.6", "error", "3", "who", "Tom Reed"));
        assertThat(both.status()).isEqualTo(422);
        assertThat(both.find("#class-fault").text()).contains("one of the two");
        Page odd = described(Map.of(
                "name",
                "G",
                "scale",
                "16000",
                "division",
                "x",
                "class",
                "a lot",
                "calibrated",
                "14.3.26",
                "who",
                "Tom Reed"));
        assertThat(odd.find("#scale-fault").text()).contains("16000 bar");
        assertThat(odd.find("#class-fault").text()).contains("a lot is no number");
        assertThat(odd.find("#calibrated-fault").text()).contains("14.3.26 is no day");
        assertThat(odd.find("#class").attr("value")).isEqualTo("a lot");
    }

    @Test
    void aGaugeIsTakenOutOfUseForAReason() {
        Page list = described(PANEL);
        Page panel = browser.follow(list.find("h2 a"));
        Page unsaid = browser.submit(panel, panel.find("form[action$=/gauges/retire]"), Map.of("who", "Tom Reed"));
        assertThat(unsaid.find("#reason-fault").text()).contains("Give a reason");
        Page gone = browser.submit(
                panel, panel.find("form[action$=/gauges/retire]"), Map.of("who", "Tom Reed", "reason", "dropped"));
        assertThat(text(gone)).contains("no longer in use");
        assertThat(text(page("/journal"))).contains("Gauge Panel taken out of use: dropped.");
    }
}
