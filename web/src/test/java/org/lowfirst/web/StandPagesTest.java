package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How supplies stand, through the pages. Supplies A, B, C of 50 L at 62, 118 and 190 bar, 20 C; bottle M-03 of 5 L at 40. */
final class StandPagesTest {

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
    void whatIsSaidShowsAsAWordAShapeAndTheReason() {
        say("B", Map.of("turn", "held_back", "reason", "for the squad"));
        say("C", Map.of("turn", "tagged_out", "reason", "valve leaks"));
        say("A", Map.of("turn", "first"));
        Document bank = open("/bank").document();
        assertThat(bank.select(".turn").eachText())
                .containsExactly("Used first", "Held back: for the squad", "Tagged out: valve leaks");
        assertThat(bank.select(".turn path").eachAttr("d")).doesNotHaveDuplicates();
        Document plan = plan("");
        assertThat(plan.select(".order li").get(0).text()).contains("Open A:");
        assertThat(plan.text()).contains("held back: for the squad", "tagged out: valve leaks");
        assertThat(bank.text()).contains("none; the next would stop at about 60 bar");
    }

    @Test
    void theOneUsedFirstComesFirstInThePlan() {
        say("B", Map.of("turn", "first"));
        assertThat(plan("").select("ol.order li b").eachText()).containsExactly("Open B:", "Open C:");
        say("B", Map.of("turn", "by_rank"));
        assertThat(plan("").select("ol.order li b").eachText()).containsExactly("Open A:", "Open B:", "Open C:");
        assertThat(open("/bank").document().select(".turn")).isEmpty();
    }

    @Test
    void holdingBackTakesAReasonAndKeepsWhatWasTyped() {
        Browser.Page refused = say("B", Map.of("turn", "held_back", "lot", "LOT 7"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#reason-fault").text()).contains("Give a reason");
        assertThat(refused.find("#lot").attr("value")).isEqualTo("LOT 7");
        assertThat(refused.find("input[value=held_back]").hasAttr("checked")).isTrue();
    }

    @Test
    void sayingNothingNewIsSaid() {
        Browser.Page refused = say("B", Map.of());
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.document().text()).contains("Nothing differs from what is known.");
    }

    @Test
    void whatCameOnPaperIsKept() {
        say("A", Map.of("lot", "LOT 7", "rent", "2026-06-14", "supplier", "Holm Gases"));
        Browser.Page page = open("/supplies/s-A/stand");
        assertThat(page.find("#lot").attr("value")).isEqualTo("LOT 7");
        assertThat(page.find("#rent").attr("value")).isEqualTo("2026-06-14");
        assertThat(page.find("#supplier").attr("value")).isEqualTo("Holm Gases");
    }

    @Test
    void twoBanksAreRankedPlannedAndGuidedApart() {
        say("A", Map.of("bank", "Trailer"));
        say("C", Map.of("bank", "Trailer"));
        Document bank = open("/bank").document();
        assertThat(bank.select("main h2").eachText()).contains("Main bank", "Trailer");
        assertThat(bank.select(".supply .rank").eachText()).containsExactly("rank 1", "rank 1", "rank 2");
        assertThat(open("/fill/plan?bottle=m-03")
                        .document()
                        .select("input[name=bank]")
                        .eachAttr("value"))
                .containsExactly("", "Trailer");
        assertThat(plan("").text()).contains("The bank cannot finish this");
        Browser.Page plan = planPage("&bank=Trailer");
        assertThat(plan.document().select("ol.order li b").eachText()).containsExactly("Open A:", "Open C:");
        Browser.Page step = browser.submit(plan, plan.find("form[action$=/start]"), Map.of("who", "Tom Reed"));
        assertThat(step.status()).isEqualTo(200);
        assertThat(step.document().select(".valves li").eachText())
                .anyMatch(valve -> valve.contains("Supply A"))
                .noneMatch(valve -> valve.contains("Supply B"));
    }

    @Test
    void theArrangementSaysWhatThePictureShows() {
        say("B", Map.of("turn", "tagged_out", "reason", "valve leaks"));
        Document page = open("/arrangement").document();
        assertThat(page.select(".counted li").eachText())
                .containsExactly(
                        "Interconnect 1 joins A and B.",
                        "Interconnect 2 joins B and C.",
                        "The hose with the transfer valve joins C.",
                        "The bottle comes last, at the end of the hose.");
        assertThat(page.select("figure svg").attr("aria-label")).contains("3 supplies, 2 interconnects.");
        assertThat(page.select(".dots li").eachText()).contains("B: its own valve, rank 2. Tagged out.");
    }

    private Browser.Page say(String supply, Map<String, String> typed) {
        Browser.Page page = open("/supplies/s-" + supply + "/stand");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("turn", page.find("input[name=turn][checked]").attr("value"));
        fields.put("who", "Tom Reed");
        fields.putAll(typed);
        return browser.submit(page, page.find("form[action$=/stand]"), fields);
    }

    private Document plan(String more) {
        return planPage(more).document();
    }

    private Browser.Page planPage(String more) {
        return open("/fill/plan?bottle=m-03&before=40&target=150&temperature=20" + more);
    }

    private Browser.Page open(String path) {
        return browser.get(URI.create(site.url("/at/" + Sample.BENCH + path)));
    }
}
