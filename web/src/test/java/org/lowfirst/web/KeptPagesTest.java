package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.net.URI;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.web.Browser.Page;

/** What is stated once for the looks ahead is kept; what is tried on a page is not, unless somebody says so. */
final class KeptPagesTest {

    private static final String PRICES = "/send-back?content=60&delivery=35&missed=20&lead=4&fills=150";

    @TempDir
    Path directory;

    private Site site;
    private final Browser browser = new Browser();

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

    private static String text(Page page) {
        return page.document().body().text();
    }

    private static String value(Page page, String field) {
        return page.find("input[type=text][name=" + field + "]").attr("value");
    }

    private Page keep(Page page) {
        return browser.submit(page, page.find("form[action$=/kept]"), Map.of("who", Sample.WHO));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(site.now(), ZoneId.systemDefault());
    }

    @Test
    void whatIsTypedForOneLookIsForgottenUnlessItIsKept() {
        Page tried = page("/forecast?lead=5&reserve=4&guess=80");
        assertThat(tried.find("details.keep").text())
                .contains("Days from order to delivery: 5", "Fills in reserve: 4", "Fills a year, your guess: 80");
        assertThat(value(page("/forecast"), "lead")).isEqualTo("3");
        Page back = keep(tried);
        assertThat(back.status()).isEqualTo(200);
        assertThat(back.address().getPath()).endsWith("/forecast");
        assertThat(back.document().select("details.keep")).isEmpty();
        Page fresh = page("/forecast");
        assertThat(value(fresh, "lead")).isEqualTo("5");
        assertThat(value(fresh, "reserve")).isEqualTo("4");
        assertThat(value(fresh, "guess")).isEqualTo("80");
        assertThat(value(page("/send-back"), "lead")).isEqualTo("5");
        assertThat(value(page("/study"), "lead")).isEqualTo("5");
        assertThat(text(page("/journal")))
                .contains("To look ahead with: days from order to delivery 5; fills in reserve 4;");
        assertThat(value(page("/forecast?lead=9&reserve=4&guess=80"), "lead")).isEqualTo("9");
        assertThat(value(page("/forecast"), "lead")).isEqualTo("5");
    }

    @Test
    void pricesKeptOnOnePageAreNotAskedAgainOnAnother() {
        assertThat(page("/send-back").document().select("h2").eachText()).doesNotContain("Send back now");
        Page back = keep(page(PRICES));
        assertThat(back.address().getPath()).endsWith("/send-back");
        Page fresh = page("/send-back");
        assertThat(fresh.document().select("h2").eachText())
                .as("the advice is there without typing")
                .contains("Send back now");
        assertThat(fresh.find("#content-hint").text()).startsWith("Kept: 60, ");
        Page study = page("/study");
        assertThat(value(study, "content")).isEqualTo("60");
        assertThat(value(study, "delivery")).isEqualTo("35");
        assertThat(value(study, "missed")).isEqualTo("20");
        assertThat(value(study, "rent")).isEmpty();
    }

    @Test
    void whatWasPaidLastIsTheDefaultUntilSomethingLaterIsKept() {
        cost("c-1", CostKind.CONTENT, "58", today().minusDays(40));
        cost("c-2", CostKind.CONTENT, "61.50", today().minusDays(3));
        cost("c-3", CostKind.DELIVERY, "-12", today().minusDays(2));
        Page fresh = page("/send-back");
        assertThat(value(fresh, "content")).isEqualTo("61.5");
        assertThat(fresh.find("#content-hint").text()).startsWith("Paid: 61.5, ");
        assertThat(value(fresh, "delivery")).as("money given back is no price").isEmpty();
        keep(page("/send-back?content=70&delivery=35&missed=20&lead=4&fills=150"));
        assertThat(value(page("/send-back"), "content")).isEqualTo("70");
    }

    private void cost(String key, CostKind kind, String amount, LocalDate day) {
        Recording recording = site.benches()
                .keepingAccounts()
                .enter(
                        Sample.BENCH,
                        new MoneyFact.CostEntered(
                                new StatedCost(kind, day, null, new StatedMoney(new BigDecimal(amount), "EUR"), "")),
                        new Submission(new EntryKey(key), Sample.WHO, null, true));
        assertThat(recording).isInstanceOf(Recording.Recorded.class);
    }

    @Test
    void nobodyNamedIsSaidAndNothingIsLost() {
        Page tried = page("/forecast?lead=5&reserve=4");
        Page refused = browser.submit(tried, tried.find("form[action$=/kept]"), Map.of("who", ""));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.document().select("#who-fault")).isNotEmpty();
        assertThat(value(refused, "lead-days")).isEqualTo("5");
        Page back = browser.submit(refused, refused.find("form[action$=/kept]"), Map.of("who", Sample.WHO));
        assertThat(back.address().getPath()).endsWith("/forecast");
        assertThat(value(back, "lead")).isEqualTo("5");
    }

    @ParameterizedTest
    @CsvSource({
        "lead-days, 900, 900 cannot be meant here. Type a whole number",
        "lead-days, 2.5, 2.5 cannot be meant here. Type a whole number",
        "content-price, -60, -60 is below zero",
        "rent-per-day, a lot, a lot is no number",
        "flyable-percent, 0, 0 cannot be meant here",
        "delivery-price, 123456789012, '123456789012 cannot be meant here. Type 0 to 1,000,000,000.'",
        "delivery-price, 1234567890123, has more digits"
    })
    void aFigureThatCannotBeMeantStandsBesideItsFieldAndNothingTypedIsLost(
            String field, String typed, String sentence) {
        Page form = page("/kept");
        Page refused = browser.submit(
                form,
                form.find("form[action$=/kept]"),
                Map.of(field, typed, "missed-fill-price", "17", "who", Sample.WHO));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#" + field + "-fault").text()).contains(sentence);
        assertThat(value(refused, field)).isEqualTo(typed);
        assertThat(value(refused, "missed-fill-price")).isEqualTo("17");
    }

    @Test
    void whatIsPlannedIsCountedInUntilItIsTakenOut() {
        Page form = page("/kept");
        String first = today().plusDays(5).toString();
        Page planned = browser.submit(
                form,
                form.find("form[action$=/kept/event]"),
                Map.of("name", "Wave week", "from", first, "days", "7", "fills", "21", "who", Sample.WHO));
        assertThat(planned.status()).isEqualTo(200);
        assertThat(text(planned)).contains("Wave week, ", "21 more fills");
        Page forecast = page("/forecast");
        assertThat(text(forecast)).contains("Planned and counted in", "Wave week, ");
        double with = week(forecast);
        Page dropped =
                browser.submit(planned, planned.find("form[action$=/kept/event/drop]"), Map.of("who", Sample.WHO));
        assertThat(text(dropped)).contains("Nothing is planned.");
        assertThat(with - week(page("/forecast"))).isBetween(4.8, 5.7);
        assertThat(text(page("/journal"))).contains("Wave week of " + first + " is not planned any more.");
    }

    private static double week(Page forecast) {
        return Double.parseDouble(text(forecast).replaceAll("(?s).*About ([0-9.]+) fills a week.*", "$1"));
    }

    @ParameterizedTest
    @CsvSource({
        "name, '', Give it a name",
        "from, soon, soon is no day",
        "from, 2001-01-01, 2001-01-01 cannot be meant here",
        "days, 400, 400 cannot be meant here",
        "fills, 5000, 5000 cannot be meant here",
        "fills, '', Type a number"
    })
    void aPlanThatCannotBeMeantStandsBesideItsField(String field, String typed, String sentence) {
        Map<String, String> fields = new java.util.HashMap<>(Map.of(
                "name",
                "Exercise",
                "from",
                today().plusDays(9).toString(),
                "days",
                "2",
                "fills",
                "6",
                "who",
                Sample.WHO));
        fields.put(field, typed);
        Page form = page("/kept");
        Page refused = browser.submit(form, form.find("form[action$=/kept/event]"), fields);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#" + field + "-fault").text()).contains(sentence);
        for (Map.Entry<String, String> sent : fields.entrySet()) {
            if (!sent.getKey().equals("who")) {
                assertThat(value(refused, sent.getKey())).isEqualTo(sent.getValue());
            }
        }
    }

    @Test
    void onceSuppliesAreOrderedNobodyIsToldAgain() {
        Page late = page("/forecast?lead=90&reserve=40");
        assertThat(late.document().select(".know")).isNotEmpty();
        keep(late);
        assertThat(calendar()).containsOnlyOnce("BEGIN:VEVENT").containsOnlyOnce("BEGIN:VALARM");
        assertThat(text(page("/ahead"))).contains("Order today");
        Page pressing = page("/forecast");
        Page refused = browser.submit(
                pressing,
                pressing.find("form[action$=/kept/ordered]"),
                Map.of("expected", "2001-01-01", "who", Sample.WHO));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#expected-fault").text()).contains("2001-01-01 cannot be meant here");
        Page ordered = browser.submit(
                refused,
                refused.find("form[action$=/kept/ordered]"),
                Map.of("expected", today().plusDays(4).toString(), "who", Sample.WHO));
        assertThat(ordered.status()).isEqualTo(200);
        assertThat(text(ordered)).contains("Ordered: a delivery is expected on").doesNotContain("Order today");
        assertThat(calendar()).doesNotContain("BEGIN:VEVENT");
        assertThat(text(page("/ahead"))).doesNotContain("Order today");
        site.waitMinutes(6 * 24 * 60L);
        assertThat(text(page("/forecast"))).as("nothing came").contains("Order today");
        assertThat(calendar()).containsOnlyOnce("BEGIN:VEVENT");
    }

    private String calendar() {
        return page("/forecast.ics").document().wholeText();
    }

    @Test
    void theCalendarGoesByWhatIsKeptAndItsEventKeepsItsIdWhenTheDayMoves() {
        String before = calendar();
        keep(page("/forecast?lead=30&reserve=2"));
        String after = calendar();
        assertThat(line(after, "UID")).isEqualTo(line(before, "UID"));
        assertThat(day(after)).isBefore(day(before));
    }

    private static LocalDate day(String calendar) {
        return LocalDate.parse(
                line(calendar, "DTSTART").replaceFirst(".*:", ""), java.time.format.DateTimeFormatter.BASIC_ISO_DATE);
    }

    private static String line(String calendar, String name) {
        return calendar.lines()
                .map(String::strip)
                .filter(line -> line.startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aCampBeginsWithWhatWasKept() {
        keep(page("/camp?days=7&pilots=6&fills=0.8&flyable=60&chance=95&volume=50+L&reading=200"));
        Page fresh = page("/camp");
        assertThat(value(fresh, "fills")).isEqualTo("0.8");
        assertThat(value(fresh, "flyable")).isEqualTo("60");
        assertThat(value(fresh, "chance")).isEqualTo("95");
        assertThat(value(fresh, "pilots")).isEqualTo("6");
    }

    @Test
    void itLeadsBackOnlyToPagesOfTheBench() {
        Page tried = page("/forecast?lead=5&reserve=2");
        tried.find("form[action$=/kept] [name=back]").attr("value", "//elsewhere.example/forecast");
        Page kept = keep(tried);
        assertThat(kept.address().getHost()).isEqualTo("127.0.0.1");
        assertThat(kept.address().getPath()).endsWith("/kept");
        assertThat(value(kept, "lead-days")).isEqualTo("5");
    }
}
