package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** A session through the pages: supplies A, B, C of 50 L at 62, 118 and 190 bar, M-03 of 5 L at 40 bar, M-11 of 2 L at 60. */
final class GuidedSessionPagesTest {

    private static final String WHO = "Iris Holm";

    @TempDir
    private Path directory;

    private Site site;
    private Browser browser;

    @BeforeEach
    void start() {
        site = Site.withSampleOfTwoBottles(directory);
        browser = new Browser();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private Page open(String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    private Page begin() {
        Page plan = open("/session?in-m-03=yes&reading-m-03=40&target-m-03=150&floor-m-03=&priority-m-03=1"
                + "&in-m-11=yes&reading-m-11=60&target-m-11=150&floor-m-11=&priority-m-11=1&plan=1");
        return browser.submit(plan, plan.find("form[action$=/session/begin]"), Map.of("who", WHO));
    }

    private Page submit(Page page, String action, Map<String, String> typed) {
        return browser.submit(page, page.find("form[action$=" + action + "]"), typed);
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    /** The one act of the page, every gauge as expected. */
    private Page act(Page page) {
        Element link = page.document().selectFirst(".thumb a.act");
        if (link != null) {
            return browser.follow(link);
        }
        Element form = page.find("form.thumb");
        Map<String, String> typed = new HashMap<>();
        if (form.attr("action").endsWith("/session/now/bottle")) {
            typed.put("before", page.find(".do").text().contains("M-03") ? "40" : "60");
            typed.put("who", WHO);
        } else if (form.attr("action").endsWith("/stage")) {
            typed.put("bottle", page.find(".two .big").text());
        } else if (form.attr("action").endsWith("/finish")) {
            typed.put("bottle", "150");
        }
        return browser.submit(page, form, typed);
    }

    private Page actUntil(Page from, String words) {
        Page page = from;
        for (int turn = 0; turn < 90 && !text(page).contains(words); turn++) {
            assertThat(page.status()).as(text(page)).isEqualTo(200);
            page = act(page);
        }
        assertThat(text(page)).contains(words);
        return page;
    }

    @Test
    void followedActByActEveryBottleEndsDone() {
        Page ended = actUntil(begin(), "The session has ended.");
        assertThat(text(ended)).contains("M-03: done", "M-11: done");
        assertThat(open("/session").address().getPath()).endsWith("/session");
    }

    @Test
    void aGaugeThatShowsLessPlansTheRestAgainAndSaysWhy() {
        Page page = begin();
        for (int turn = 0; turn < 60 && !(expected(page) > 100.0 && entersAStage(page)); turn++) {
            page = act(page);
        }
        Page next = submit(page, "/stage", Map.of("bottle", "85"));
        assertThat(text(next)).contains("The rest was planned again.", "read 85 bar instead of");
        actUntil(next, "The session has ended.");
    }

    private static boolean entersAStage(Page page) {
        return !page.document().select("form[action$=/stage]").isEmpty();
    }

    private static double expected(Page page) {
        Element shown = page.document().selectFirst(".two div:not(.never) .big");
        return shown == null ? 0.0 : Double.parseDouble(shown.text());
    }

    @Test
    void aBottleIsTakenOutOnlyWithAReasonAndTheOtherGoesOn() {
        Page page = begin();
        String fill = page.find("#out-fill option").attr("value");
        String name = page.find("#out-fill option").text();
        Page refused = submit(page, "/now/out", Map.of("out-reason", "", "fill", fill));
        assertThat(refused.status()).isEqualTo(422);
        Page out = submit(refused, "/now/out", Map.of("out-reason", "its valve leaks", "fill", fill));
        assertThat(text(out)).contains(name + ": not filled further. its valve leaks");
        String other = name.equals("M-03") ? "M-11" : "M-03";
        assertThat(text(actUntil(out, "The session has ended."))).contains(other + ": done");
    }

    @Test
    void endedEarlyItSaysSoAndAnotherFillMayBegin() {
        Page page = act(begin());
        Page ended = submit(open("/session/now"), "/now/end", Map.of("end-reason", "a thunderstorm"));
        assertThat(page.status()).isEqualTo(200);
        assertThat(text(ended)).contains("The session has ended.");
        assertThat(text(open("/fill"))).doesNotContain("under way");
    }

    @Test
    void theSameFormSentTwiceBeginsOneFill() {
        Page page = begin();
        Element form = page.find("form.thumb");
        Map<String, String> typed =
                Map.of("before", page.find(".do").text().contains("M-03") ? "40" : "60", "who", WHO);
        Page first = browser.submit(page, form, typed);
        Page second = browser.submit(page, form, typed);
        assertThat(first.status()).isEqualTo(200);
        assertThat(second.address().getPath()).isEqualTo(first.address().getPath());
        assertThat(text(open("/session/now"))).doesNotContain("planned again");
    }

    @Test
    void somebodyElseFindsTheSessionOnTheFillPage() {
        begin();
        browser = new Browser();
        assertThat(open("/fill").find(".know a").attr("href")).endsWith("/session/now");
        assertThat(open("/session").address().getPath()).endsWith("/session/now");
    }
}
