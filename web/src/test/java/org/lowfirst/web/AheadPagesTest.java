package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.web.Browser.Page;

/** The pages that look ahead, over supplies A, B, C at 62, 118 and 190 bar and bottle M-03 of 5 L. */
final class AheadPagesTest {

    private static final Map<String, String> SESSION = Map.of(
            "in-m-03",
            "yes",
            "reading-m-03",
            "40",
            "target-m-03",
            "150",
            "floor-m-03",
            "",
            "priority-m-03",
            "1",
            "plan",
            "1");

    private static final Map<String, String> STUDY = Map.of(
            "from",
            "1",
            "to",
            "3",
            "content",
            "60",
            "delivery",
            "35",
            "rent",
            "0,25",
            "missed",
            "10",
            "runs",
            "10",
            "years",
            "2");

    private static final Map<String, String> FLIGHT = Map.of(
            "profile",
            "0:00 1200\n0:12 5000 tow\n0:57 16500 climb\n2:17 16500\n2:57 1200 home",
            "bottle-1",
            "m-03",
            "reading-1",
            "90");

    @TempDir
    static Path directory;

    private static Site site;
    private final Browser browser = new Browser();

    @BeforeAll
    static void open() {
        site = Site.withSample(directory);
    }

    @AfterAll
    static void close() {
        site.close();
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    private Page page(String path, Map<String, String> typed) {
        StringBuilder query = new StringBuilder(path);
        char sign = '?';
        for (Map.Entry<String, String> field : typed.entrySet()) {
            query.append(sign)
                    .append(field.getKey())
                    .append('=')
                    .append(java.net.URLEncoder.encode(field.getValue(), java.nio.charset.StandardCharsets.UTF_8));
            sign = '&';
        }
        return page(query.toString());
    }

    private static Map<String, String> with(Map<String, String> typed, String field, String value) {
        Map<String, String> changed = new LinkedHashMap<>(typed);
        changed.put(field, value);
        return changed;
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    private static String fault(Page page, String field) {
        return page.find("#" + field + "-fault").text();
    }

    @Test
    void thePlaceLeadsOnToAllOfThem() {
        assertThat(page("/ahead").document().select(".hub a").eachAttr("href"))
                .map(href -> href.replaceFirst(".*/", ""))
                .contains("session", "forecast", "send-back", "flight", "camp", "study");
    }

    @Test
    void aSessionIsPlannedFromChosenBottlesAndEachStageStartsAsAFill() {
        Page choose = page("/session");
        Page fields = browser.submit(choose, choose.find("form[action$=/session]"), Map.of("in-m-03", "yes"));
        assertThat(fields.find("[name=target-m-03]").attr("value")).isEqualTo("150");
        Page plan = page("/session", SESSION);
        assertThat(plan.status()).isEqualTo(200);
        assertThat(text(plan))
                .contains("1 of 1", "M-03 on A.", "no plan of whole stages makes more ready", "emptiest first");
        assertThat(plan.document().select("svg.picture[role=img]")).isNotEmpty();
        Page fill = browser.follow(plan.find("ol.order a"));
        assertThat(fill.status()).isEqualTo(200);
        assertThat(text(fill)).contains("A").doesNotContain("cannot");
        assertThat(page("/session?next=1").status()).isEqualTo(422);
    }

    @ParameterizedTest
    @CsvSource({
        "floor-m-03, 160, The floor (160 bar) is above the target (150 bar)",
        "priority-m-03, 0, The priority (0) must be a whole number",
        "reading-m-03, 260, Bottle M-03 reads 260 bar",
        "target-m-03, -5, must not be below zero"
    })
    void whatIsWrongWithASessionStandsBesideItsFieldAndNothingTypedIsLost(String field, String typed, String sentence) {
        Page refused = page("/session", with(SESSION, field, typed));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(fault(refused, field)).contains(sentence);
        assertThat(refused.find("[name=" + field + "]").attr("value")).isEqualTo(typed);
    }

    @Test
    void theComingWeeksSayHowLittleIsKnownAndGiveACalendarWithOneDay() {
        Page forecast = page("/forecast");
        assertThat(forecast.status()).isEqualTo(200);
        assertThat(text(forecast)).contains("There is no history yet", "Fills left", "Order");
        assertThat(forecast.document().select("svg.picture[role=img]")).hasSize(1);
        Page calendar = page("/forecast.ics?lead=3&reserve=2");
        assertThat(calendar.document().wholeText())
                .contains("BEGIN:VCALENDAR")
                .containsOnlyOnce("BEGIN:VEVENT")
                .contains("Order supplies for Larkmoor Gliders");
        Page refused = page("/forecast?lead=1.5&reserve=2");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(fault(refused, "lead")).contains("1.5 must be a whole number");
        assertThat(fault(page("/forecast?lead=900&reserve=2"), "lead")).contains("(900)", "0 to 365");
        assertThat(fault(page("/forecast?fills-1=6"), "day-1")).contains("Say the day");
    }

    @Test
    void whatToSendBackComparesEachChoiceWithWaiting() {
        Page advice = page("/send-back?content=60&delivery=35&missed=20&lead=3&fills=150");
        assertThat(advice.status()).isEqualTo(200);
        assertThat(text(advice)).contains("nothing, wait", "A and B", "More in the year", "cheapest");
        Page refused = page("/send-back?content=-60&delivery=35&missed=20&lead=3&fills=150");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(fault(refused, "content")).contains("-60");
        assertThat(refused.find("[name=content]").attr("value")).isEqualTo("-60");
        assertThat(fault(page("/send-back?content=60&fills=0"), "fills")).contains("fills a day (0)");
    }

    @Test
    void aStudyRunsInTheBackgroundAndEndsWithPicturesAndATable() throws InterruptedException {
        Page form = page("/study");
        Page result = browser.submit(form, form.find("form[action$=/study]"), STUDY);
        String address = result.address().toString();
        for (int i = 0; i < 300 && text(result).contains("Under way"); i++) {
            Thread.sleep(100);
            result = browser.get(URI.create(address));
        }
        assertThat(text(result))
                .contains("Cheapest per fill: bank of", "10 runs of 2 years", "What is not in the cost");
        assertThat(result.document().select("svg.picture[role=img]")).hasSize(3);
        assertThat(result.document().select("svg.picture").get(1).text()).doesNotContain("\u2191");
        assertThat(result.document().select("svg.picture").get(2).text()).doesNotContain("\u2191");
        assertThat(browser.get(URI.create(address + ".csv")).document().wholeText())
                .startsWith("alternative,bank_size,");
        Page change = browser.follow(result.find("a[href*='/study?']"));
        assertThat(change.find("[name=rent]").attr("value")).isEqualTo("0,25");
        assertThat(browser.get(URI.create(site.url("/at/larkmoor/study/nowhere")))
                        .status())
                .isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource({
        "content, -1, -1 is below zero",
        "to, 500, A bank of 500 is more than this page compares",
        "fills, 0, The fills a year (0) must be 1 to",
        "volume, 5000, 5000",
        "content, '', Type a price",
        "content, '1,450', can be read in two ways",
        "rent, -2, is below zero"
    })
    void whatIsWrongWithAStudyStandsBesideItsFieldAndNothingTypedIsLost(String field, String typed, String sentence) {
        Page form = page("/study");
        Page refused = browser.submit(form, form.find("form[action$=/study]"), with(STUDY, field, typed));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(fault(refused, field)).contains(sentence);
        assertThat(refused.find("[name=delivery]").attr("value")).isEqualTo("35");
    }

    @Test
    void aStudyComparesAResidualWhenItIsTyped() throws InterruptedException {
        Map<String, String> typed = with(STUDY, "habit-residual", "yes");
        Page form = page("/study");
        Page refused = browser.submit(form, form.find("form[action$=/study]"), typed);
        assertThat(fault(refused, "residual")).contains("Say down to which reading");
        Page result = browser.submit(form, form.find("form[action$=/study]"), with(typed, "residual", "60"));
        for (int i = 0; i < 300 && text(result).contains("Under way"); i++) {
            Thread.sleep(100);
            result = browser.get(result.address());
        }
        assertThat(text(result)).contains("bank of 3, at a residual", "bank of 3, one at a time");
    }

    @Test
    void aFlightSaysWhatItNeedsWhoNeedsOxygenWhenAndWhatItDoesNotKnow() {
        Page flight = flown(FLIGHT);
        assertThat(flight.status()).isEqualTo(200);
        assertThat(text(flight))
                .contains("flight, margin and reserve need", "last", "What this does not know", "NCO.OP.190")
                .doesNotContainPattern("(?i)\\b(fine|safe)\\b");
        Page empty = flown(with(FLIGHT, "reading-1", "20"));
        assertThat(text(empty)).contains("Not covered", "It must read at least", "The bank");
        assertThat(empty.document().select("a[href*='/fill/plan?bottle=m-03']")).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "profile, 0:00 1200, Type at least two lines",
        "profile, '0:00 1200\n0:00 5000', is not later than the line before it",
        "profile, '0:00 1200\n0:01 30000', climbs or descends at",
        "profile, '0:00 1200\nsoon 5000', Line 2 (soon 5000)",
        "name-1, '', Type a name",
        "flow-1, 500, beyond what can be meant",
        "reading-1, 260, far above its marking"
    })
    void whatIsWrongWithAFlightStandsBesideItsFieldAndNothingTypedIsLost(String field, String typed, String sentence) {
        Page refused = flown(with(FLIGHT, field, typed));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(fault(refused, field)).contains(sentence);
        Element kept = refused.find("[name=" + field + "]");
        assertThat(kept.is("textarea") ? kept.text() : kept.attr("value")).isEqualToNormalizingWhitespace(typed);
    }

    @Test
    void nobodyOnBoardIsSaidBesideTheFirstName() {
        Page refused = flown(with(with(FLIGHT, "name-1", ""), "flow-1", ""));
        assertThat(fault(refused, "name-1")).contains("nobody on board");
    }

    private Page flown(Map<String, String> typed) {
        Page form = page("/flight");
        return browser.submit(form, form.find("form[action$=/flight]"), typed);
    }

    @Test
    void aCampSaysHowManySuppliesToTake() {
        Page camp = page("/camp?days=7&pilots=6&fills=0.5&flyable=70&chance=90&volume=50+L&reading=200");
        assertThat(camp.status()).isEqualTo(200);
        assertThat(text(camp)).contains("Take", "every bottle can be finished", "Fills made");
        Page refused = page("/camp?days=7&pilots=0&fills=0.5&flyable=70&chance=90&volume=50+L&reading=200");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(fault(refused, "pilots")).contains("number of pilots (0)", "1 to 500");
    }
}
