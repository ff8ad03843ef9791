package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is entered after it happened, through the pages. Supplies A, B, C of 50 L at 62, 118 and 190 bar, 20 C; bottle M-03 of 5
 * L at 40. Where two supplies meet: computed with CoolProp 8.0.0 (Schmidt and Wagner), 118 and 190 bar at 153.5 bar; the plain
 * fill leaves 60.0, 112.8 and 186.1 bar.
 */
final class PastPagesTest {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    @TempDir
    private Path directory;

    private Site site;
    private Browser browser;

    @BeforeEach
    void start() {
        site = Site.withSample(directory);
        browser = new Browser();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void twoOpenTogetherMeetAndSayWhatItCost() {
        Browser.Page report = together(Map.of("first", "s-B", "second", "s-C"));
        assertThat(report.find("h1").text()).isEqualTo("B and C were open together");
        assertThat(report.find(".big").text()).isIn("153", "154");
        assertThat(report.document().select("tbody tr").get(0).text())
                .startsWith("B 118 bar")
                .endsWith("reckoned");
        assertThat(report.document().text()).contains("1,870 L run over", "L above 150 bar are lost", "Before: 7,");
        assertThat(open("/bank")
                        .document()
                        .select(".supply .reading b")
                        .eachText()
                        .subList(1, 3))
                .allMatch(reading -> List.of("153", "154").contains(reading));
    }

    @Test
    void twoOpenTogetherWithGaugesReadIsAsRead() {
        Browser.Page report =
                together(Map.of("first", "s-B", "second", "s-C", "first-after", "130", "second-after", "175"));
        assertThat(report.document().select("tbody tr").eachText())
                .containsExactly("B 118 bar 130 bar read", "C 190 bar 175 bar read");
    }

    @Test
    void aSlipInAReadingAfterwardsIsCorrected() {
        Browser.Page report =
                together(Map.of("first", "s-B", "second", "s-C", "first-after", "130", "second-after", "157"));
        Browser.Page entry = browser.follow(report.find("a[href*=/journal/]"));
        browser.submit(
                entry,
                entry.find("form:has([name=second])"),
                Map.of("second", "175", "reason", "slip", "who", "Tom Reed"));
        assertThat(open("/bank").document().select(".supply .reading b").eachText())
                .containsExactly("62", "130", "175");
    }

    @Test
    void oneSupplyIsNotTwo() {
        Browser.Page refused = together(Map.of("first", "s-B", "second", "s-B", "first-after", "130"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#second-fault").text()).contains("the same supply");
        assertThat(refused.find("#first-after").attr("value")).isEqualTo("130");
    }

    @Test
    void aFillIsPutWhereItHappenedWhateverCameFirst() {
        site.waitMinutes(60);
        Instant later = site.now().minus(Duration.ofMinutes(10));
        Instant earlier = site.now().minus(Duration.ofMinutes(20));
        Browser.Page one = past(told(later, "150", "151"));
        assertThat(one.find("h1").text()).isEqualTo("Entered: M-03");
        Browser.Page late = past(told(earlier, "40", "150"));
        assertThat(late.document().text()).contains("The bank now: A 60 bar, B 113 bar, C 186 bar.");
        List<String> sentences = open("/journal").document().select(".what").eachText();
        assertThat(sentences.subList(0, 2))
                .containsExactly("M-03 filled from 150 bar to 151 bar.", "M-03 filled from 40 bar to 150 bar.");
        assertThat(open("/journal").document().text()).contains("was entered later but happened before");
    }

    @Test
    void sendingItThreeTimesIsOneEntry() {
        site.waitMinutes(60);
        Browser.Page page = open("/fill/past");
        Element form = page.find("form[action$=/fill/past]");
        Map<String, String> typed = told(site.now().minus(Duration.ofMinutes(20)), "40", "150");
        Browser.Page first = browser.submit(page, form, typed);
        assertThat(browser.submit(page, form, typed).address().getPath())
                .isEqualTo(first.address().getPath());
        browser.submit(page, form, typed);
        assertThat(open("/journal").document().select(".what").eachText())
                .filteredOn(what -> what.contains("filled from"))
                .hasSize(1);
    }

    @Test
    void theStagesAreTakenAsToldInTheirOrder() {
        site.waitMinutes(60);
        Map<String, String> typed = told(site.now().minus(Duration.ofMinutes(20)), "40", "150");
        typed.put("stage-supply-0", "s-C");
        typed.put("stage-bottle-0", "150");
        typed.put("stage-left-0", "183");
        Browser.Page done = past(typed);
        assertThat(done.document().select(".dots li").eachText()).containsExactly("Supply C: bottle to 150 bar");
        assertThat(done.document().text()).contains("A 62 bar, B 118 bar, C 183 bar");
    }

    @Test
    void nothingIsLostWhenSomethingCannotBe() {
        Map<String, String> typed = told(site.now().plus(Duration.ofHours(3)), "40", "150");
        typed.put("day", "2999-01-01");
        typed.put("target", "150");
        Browser.Page refused = past(typed);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#time-fault").text()).contains("later than now");
        assertThat(refused.find("#before").attr("value")).isEqualTo("40");
        assertThat(refused.find("#target").attr("value")).isEqualTo("150");
        Map<String, String> nonsense = told(site.now(), "40", "");
        nonsense.put("time", "half ten");
        Browser.Page again = past(nonsense);
        assertThat(again.find("#time-fault").text()).contains("half ten is no time of day");
        assertThat(again.find("#after-fault").text()).isNotEmpty();
    }

    @Test
    void whatTheRulesHadAgainstItIsSaidAndItIsKept() {
        site.waitMinutes(60);
        Browser.Page done = past(told(site.now().minus(Duration.ofMinutes(5)), "0", "150"));
        assertThat(done.status()).isEqualTo(200);
        assertThat(done.document().select(".know").text()).contains("Against the rules on that day, and kept as what");
    }

    @Test
    void whatHappenedIsFlaggedAndNotRefused() {
        site.waitMinutes(60);
        Browser.Page bottle = open("/bottles/m-03");
        browser.submit(
                bottle, bottle.find("form[action$=/retire]"), Map.of("reason", "test overdue", "who", "Tom Reed"));
        Map<String, String> typed = told(site.now().minus(Duration.ofMinutes(5)), "40", "205");
        Browser.Page done = past(typed);
        assertThat(done.status()).isEqualTo(200);
        assertThat(done.document().select(".know").text())
                .contains("M-03 is retired.", "It read 205 bar, above its marked service pressure, 200 bar.");
    }

    private Browser.Page together(Map<String, String> typed) {
        Browser.Page page = open("/two-open");
        Map<String, String> fields = new LinkedHashMap<>(typed);
        fields.put("who", "Tom Reed");
        return browser.submit(page, page.find("form[action$=/two-open]"), fields);
    }

    private static Map<String, String> told(Instant at, String before, String after) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("bottle", "m-03");
        typed.put("day", at.atZone(ZoneOffset.UTC).toLocalDate().toString());
        typed.put("time", CLOCK.format(at.atZone(ZoneOffset.UTC)));
        typed.put("before", before);
        typed.put("after", after);
        typed.put("temperature", "20");
        typed.put("who", "Tom Reed");
        return typed;
    }

    private Browser.Page past(Map<String, String> typed) {
        Browser.Page page = open("/fill/past");
        return browser.submit(page, page.find("form[action$=/fill/past]"), typed);
    }

    private Browser.Page open(String path) {
        return browser.get(URI.create(site.url("/at/" + Sample.BENCH + path)));
    }
}
