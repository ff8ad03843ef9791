package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/**
 * A bench in the United States: each bottle of a morning its own way, through the pages. Months are counted from today. Test
 * intervals: 49 CFR 180.209(a) table 1; life of 3HT: AC 43.13-1B change 1 p. 9-42.
 */
final class FitToFillPagesTest {

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MM/yyyy", Locale.ROOT);
    private final YearMonth now = YearMonth.now(ZoneOffset.UTC);

    @TempDir
    Path directory;

    private final Browser browser = new Browser();
    private Site site;
    private String place;

    @BeforeEach
    void open() {
        site = Site.over(directory);
        Page fresh = browser.get(URI.create(site.url("/new")));
        Page bank = browser.submit(
                fresh,
                fresh.find("form[action=/new]"),
                Map.of(
                        "name", "Pinefold Aero Club",
                        "units", "us",
                        "rules", "us",
                        "temperature", "70 F",
                        "full", "2200 psi",
                        "people", "A. Moss\nR. Fern"));
        place = bank.address().getPath().replaceFirst("/bank.*", "");
        Page supply = page("/supplies/new");
        browser.submit(
                supply,
                supply.find("form[action$=/supplies/new]"),
                Map.of("name", "H1", "volume", "46.5", "marked", "2265", "reading", "2200", "who", "A. Moss"));
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void aBottleOutOfDateShowsNoStepAndCannotBeStartedByADirectPost() {
        String bottle = bottle("B-22", "1800");
        stamp(bottle, "3AA", now.minusYears(20), now.minusYears(5).minusMonths(1));
        Page plan = page("/fill/plan?bottle=" + bottle + "&before=1240&target=1800&temperature=70");
        assertThat(text(plan))
                .contains("May be used up, no fill", "no fill, not even a part", "Nobody can set it aside.")
                .doesNotContain("Open H1", "Supplies, in this order");
        assertThat(plan.document().select("form[action$=/fill/start]")).isEmpty();
        assertThat(plan.document().select("form[action$=/fill/look]")).isEmpty();
        assertThat(text(page("/fill/time?bottle=" + bottle + "&before=1240&target=1800&temperature=70")))
                .contains("May be used up, no fill")
                .doesNotContain("Open H1");
        Page token = page("/bottles/new");
        Page posted = browser.submit(
                token, startForm(token, bottle, "1240", "1250"), Map.of("who", "A. Moss", "key", "direct-1"));
        assertThat(posted.status()).isEqualTo(422);
        assertThat(text(posted)).contains("May be used up, no fill");
        assertThat(text(page("/journal"))).doesNotContain("Fill of B-22 begun");
        assertThat(text(page("/fill"))).contains("Not to be filled");
    }

    @Test
    void aSoundBottleIsLookedAtFirstThenPlannedAndStarted() {
        String bottle = bottle("B-21", "1800");
        stamp(bottle, "3AA", now.minusYears(20), now.minusYears(5));
        assertThat(text(page("/fill"))).contains("To be looked at", "left");
        Page look = page("/fill/plan?bottle=" + bottle + "&before=600&target=1800&temperature=70");
        assertThat(text(look)).contains("Look at the bottle", "Cracked?", "Its test is good to");
        assertThat(look.document().select("form[action$=/fill/start]")).isEmpty();
        Page open = browser.submit(
                look, look.find("form[action$=/fill/look]"), Map.of("q-cracked", "no", "who", "A. Moss"));
        assertThat(open.status()).isEqualTo(422);
        assertThat(open.find("#q-leaking-fault").text()).isEqualTo("Answer it: look at the bottle.");
        assertThat(open.document().select("input[name=q-cracked][value=no][checked]"))
                .hasSize(1);
        Page plan = answered(open, Map.of());
        assertThat(text(plan)).contains("Fit, with a note", "left", "Open H1");
        Page started = browser.submit(plan, plan.find("form[action$=/fill/start]"), Map.of("who", "A. Moss"));
        assertThat(started.status()).isEqualTo(200);
        assertThat(text(page("/journal"))).contains("Fill of B-21 begun at 600 psi, to 1800 psi.");
    }

    @Test
    void oneLookOverTheWholeListAnswersEachQuestionByName() {
        String bottle = bottle("B-31", "1800");
        stamp(bottle, "3AA", now.minusYears(20), now.minusYears(5));
        Page look = page("/fill/plan?bottle=" + bottle + "&before=600&target=1800&temperature=70");
        Element over = look.find("form[action$=/fill/look-over]");
        List<String> asked =
                look.document().select("form[action$=/fill/look] legend").eachText();
        assertThat(asked).hasSize(10).contains("Cracked?");
        assertThat(over.select("li").eachText().stream().map(item -> item + "?"))
                .containsExactlyElementsOf(asked);
        assertThat(look.find("details:has(form[action$=/fill/look])").hasAttr("open"))
                .isFalse();

        Page nobody = browser.submit(look, over, Map.of("who", ""));
        assertThat(nobody.status()).isEqualTo(422);
        assertThat(nobody.find("#who-over-fault").text()).isNotEmpty();
        Page blind = browser.submit(look, over, Map.of("who", "A. Moss", "shown", "cracked leaking"));
        assertThat(blind.status()).isEqualTo(422);
        assertThat(text(blind)).contains("This list has changed since.").doesNotContain("Open H1");
        Page without = browser.submit(look, over, Map.of("who", "A. Moss", "shown", ""));
        assertThat(without.status()).isEqualTo(422);

        Page plan = browser.submit(
                blind, blind.find("form[action$=/fill/look-over]"), Map.of("who", "A. Moss", "key", "over-1"));
        assertThat(plan.status()).isEqualTo(200);
        assertThat(text(plan)).contains("Fit, with a note", "Open H1");
        assertThat(text(page("/journal"))).contains("A. Moss looked at B-31: none of 10 questions answered yes.");
    }

    @Test
    void aTargetAboveTheMarkIsKeptAtTheMarkAndSaysWhy() {
        String bottle = bottle("B-26", "1800");
        stamp(bottle, "3AA", now.minusYears(10), now.minusYears(2));
        Page look = page("/fill/plan?bottle=" + bottle + "&before=300&target=2015&temperature=70");
        Page plan = answered(look, Map.of());
        assertThat(text(plan)).contains("2,015 psi at 70 F is more than it may hold, 1,800 psi at 70 F.");
        assertThat(plan.find("section.two .never .big").text()).isEqualTo("1,800");
        Page started = browser.submit(plan, plan.find("form[action$=/fill/start]"), Map.of("who", "A. Moss"));
        assertThat(started.status()).isEqualTo(200);
        assertThat(text(page("/journal"))).contains("Fill of B-26 begun at 300 psi, to 1800 psi.");
    }

    @Test
    void aLifeThatIsOverAndAMarkingNobodyEnteredAreSaidAtOnce() {
        String light = bottle("B-23", "1850");
        stamp(light, "3HT", now.minusYears(24).minusMonths(1), now.minusYears(2));
        assertThat(text(page("/fill/plan?bottle=" + light))).contains("Life over, no fill", "Take it out of use");
        String bare = bottle("B-27", "1800");
        Page gate = page("/fill/plan?bottle=" + bare);
        assertThat(text(gate)).contains("Marking not entered", "Type its stamp: one line.");
        assertThat(browser.follow(gate.find("a.button.act")).find("h1").text()).isEqualTo("Stamp of B-27");
    }

    @Test
    void anEmptyBottleIsInspectedFirst() {
        String bottle = bottle("B-25", "2015");
        stamp(bottle, "3AL", now.minusYears(6), now.minusYears(1));
        Page gate = page("/fill/plan?bottle=" + bottle + "&before=0&target=1800&temperature=70");
        assertThat(text(gate)).contains("It reads 0 psi, less than 25 psi", "Have it inspected and cleaned first.");
        Page refused = browser.submit(gate, gate.find("form[action$=/fill/inspected]"), Map.of("who", "A. Moss"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#by-fault").text()).isEqualTo("Say who did it.");
        Page inspected = browser.submit(
                refused, refused.find("form[action$=/fill/inspected]"), Map.of("who", "A. Moss", "by", "test shop"));
        assertThat(text(answered(inspected, Map.of()))).contains("Open H1", "has been inspected since");
    }

    @Test
    void aDoubtIsTakenOnByASecondPersonAndNotByWhoFills() {
        String bottle = bottle("B-28", "1800");
        stamp(bottle, "3AA", now.minusYears(10), now.minusYears(2));
        Page look = page("/fill/plan?bottle=" + bottle + "&before=300&target=1800&temperature=70");
        Page doubt = answered(look, Map.of("q-corroded", "not-sure"));
        assertThat(text(doubt)).contains("Corroded or pitted: not sure.").doesNotContain("Open H1");
        Page alone = browser.submit(
                doubt,
                doubt.find("form[action$=/fill/set-aside]"),
                Map.of("filler", "A. Moss", "who", "A. Moss", "reason", "surface rust"));
        assertThat(alone.status()).isEqualTo(422);
        assertThat(text(alone)).contains("It takes a second person; A. Moss fills.");
        Page taken = browser.submit(
                alone,
                alone.find("form[action$=/fill/set-aside]"),
                Map.of("filler", "A. Moss", "who", "R. Fern", "reason", "surface rust"));
        assertThat(text(taken)).contains("Set aside for one fill", "Open H1");
        assertThat(text(page("/journal"))).contains("R. Fern set what the rules refuse of B-28 (1) aside");
    }

    @Test
    void aStampIsShownPartByPartWithItsUnknownAndAmbiguousParts() {
        String bottle = bottle("B-30", "1800");
        Page stamp = page("/bottles/" + bottle + "/stamp?convention=us&line=DOT-3AA2015+S1742+05-06+%23%23X");
        assertThat(text(stamp)).contains("Specification: DOT 3AA, steel", "Service pressure: 2,015 psi", "##X");
        assertThat(stamp.find("form[method=post][action$=/stamp] input[name=marked]")
                        .attr("value"))
                .isEqualTo("2015");
        assertThat(stamp.document().select("input[type=radio][name^=part-][value=other]"))
                .isNotEmpty();
        String echo = page("/echo/stamp/line?convention=us&line=DOT-3AA2015")
                .document()
                .text();
        assertThat(echo).contains("Specification: DOT 3AA, steel");
        Page refused = browser.submit(
                stamp, stamp.find("form[method=post][action$=/stamp]"), Map.of("tested", "13/2020", "who", "A. Moss"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#tested-fault").text()).contains("Type month and year");
        assertThat(refused.find("input[name=tested]").attr("value")).isEqualTo("13/2020");
    }

    @Test
    void theRulesAreChangedOneByOneAndAsAWholeAndEarlierOnesStay() {
        assertThat(text(page("/rules")))
                .contains("The built-in book is in force", "Tested every 3 years: 3HT.", "(the text was read)");
        Page one = page("/rules/edit?rule=us.retest.3ht");
        Page wrong = browser.submit(
                one,
                one.find("form[action$=/rules/edit]"),
                Map.of(
                        "text",
                        one.find("textarea").wholeText().strip().replace("years = 3", "years = three"),
                        "who",
                        "A. Moss"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(text(wrong)).contains("Line 9, column 9:").contains("years = three");
        Page changed = browser.submit(
                wrong,
                wrong.find("form[action$=/rules/edit]"),
                Map.of(
                        "text",
                        wrong.find("textarea").wholeText().strip().replace("years = three", "years = 2"),
                        "who",
                        "A. Moss"));
        assertThat(text(changed)).contains("A book of this bench is in force.", "Tested every 2 years: 3HT.");
        Page back = browser.submit(changed, changed.find("form[action$=/rules/built-in]"), Map.of("who", "A. Moss"));
        assertThat(text(back)).contains("The built-in book is in force", "Tested every 3 years: 3HT.");
        Page earlier =
                browser.follow(back.document().select("a[href*=/rules/version]").get(1));
        assertThat(text(earlier)).contains("An earlier version", "Tested every 2 years: 3HT.");
    }

    private Page answered(Page gate, Map<String, String> others) {
        Map<String, String> typed = new HashMap<>(Map.of("who", "A. Moss"));
        gate.find("form[action$=/fill/look]")
                .select("input[type=radio]")
                .forEach(radio -> typed.put(radio.attr("name"), "no"));
        typed.putAll(others);
        return browser.submit(gate, gate.find("form[action$=/fill/look]"), typed);
    }

    private String bottle(String name, String marked) {
        Page fresh = page("/bottles/new");
        browser.submit(
                fresh,
                fresh.find("form[action$=/bottles/new]"),
                Map.of("name", name, "volume", "9", "marked", marked, "who", "A. Moss"));
        return page("/bottles").document().select("h2 a").stream()
                .filter(link -> link.text().equals(name))
                .map(link -> link.attr("href").replaceFirst(".*/", ""))
                .findFirst()
                .orElseThrow();
    }

    private void stamp(String bottle, String code, YearMonth made, YearMonth tested) {
        Page stamp = page("/bottles/" + bottle + "/stamp?convention=us&line=DOT-" + code);
        Page entered = browser.submit(
                stamp,
                stamp.find("form[method=post][action$=/stamp]"),
                Map.of(
                        "made", MONTH.format(made),
                        "tested", MONTH.format(tested),
                        "gas", "oxygen",
                        "connection", "CGA 540",
                        "oxygen-clean", "yes",
                        "other-service", "no",
                        "consent", "yes",
                        "fills", "0",
                        "who", "A. Moss"));
        assertThat(entered.status()).as(text(entered)).isEqualTo(200);
    }

    /** The form that starts a fill, as another client would send it: the page of a refused bottle has none. */
    private static Element startForm(Page page, String bottle, String before, String target) {
        Element form = page.find("form[method=post]").clone();
        form.empty();
        form.setBaseUri(page.document().baseUri());
        form.attr("method", "post");
        form.attr("action", page.address().getPath().replaceFirst("/bottles/new.*", "/fill/start"));
        Map<String, String> fields =
                Map.of("bottle", bottle, "before", before, "target", target, "temperature", "70", "who", "", "key", "");
        fields.forEach(
                (name, value) -> form.appendElement("input").attr("name", name).attr("value", value));
        page.document().select("input[name=_csrf]").stream().limit(1).forEach(token -> form.appendChild(token.clone()));
        return form;
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url(place + path)));
    }

    private static String text(Page page) {
        return page.document().body().text();
    }
}
