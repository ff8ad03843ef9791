package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.web.Browser.Page;

/** Prices, who pays, statements, month close, costs and rent, through their pages. */
final class MoneyPagesTest {

    private static final String WHO = "Tom Reed";

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

    @Test
    void theHubLeadsToTheAccounts() {
        assertThat(text(page("/bench"))).contains("Statements", "Prices", "Supplier costs", "Rent check");
        assertThat(text(page("/statements"))).contains("No prices are set");
    }

    @Test
    void pricesAreWorkedOutInAnExampleBeforeTheyAreSet() {
        Page tried = prices(Map.of("try", "yes", "price", "0,011", "minimum", "1.50", "guests", "20"));
        assertThat(tried.status()).isEqualTo(200);
        assertThat(tried.find("#example").text())
                .contains("A fill of 500 L 5.50 EUR", "500.0 L x 0.011 = 5.50", "A top-up of 60 L 1.50 EUR")
                .contains(
                        "less than the least charge, so 1.50",
                        "A fill of 500 L, guest 6.60 EUR",
                        "guests 20 % more: 1.10");
        assertThat(tried.find("input[name=price]").attr("value")).isEqualTo("0,011");
        assertThat(text(page("/prices"))).contains("None yet.");
        Page set = prices(Map.of("price", "0,011", "minimum", "1.50", "guests", "20", "who", WHO));
        assertThat(set.status()).isEqualTo(200);
        assertThat(text(set)).contains("in force", "0.011 EUR a standard litre, at least 1.50, guests 20 % more");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "price | -0.011 | -0.011 is below zero",
                "price | 0.011 USD | 0.011 USD is not an amount in EUR",
                "price | cheap | cheap is not an amount in EUR",
                "price | 1,234 | 1,234 can be read two ways. Type 1234 or 1.2340.",
                "price | 1.2.3 | 1.2.3 is no amount",
                "minimum | -1 | -1 is below zero",
                "guests | 2000 | Guests pay 0 to 400 % more, not 2000 %",
                "currency | XQQ | XQQ is not a currency that is paid in",
                "currency | EUROS | EUROS is not a currency that is paid in",
                "step | 0.001 | 0.001 EUR cannot be paid. Round to 0.01 EUR",
                "step | 0 | 0 EUR cannot be paid",
                "from | 14.6.26 | 14.6.26 is no day",
                "from | 1020-01-01 | 1020-01-01 cannot be meant here",
                "who | '' | Choose who you are."
            })
    void aPriceThatCannotBeIsRefusedBesideItsFieldAndKept(String field, String typed, String sentence) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("price", "0.011", "guests", "20", "who", WHO));
        fields.put(field, typed);
        Page refused = prices(fields);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#" + field + "-fault").text()).contains(sentence);
        if (!field.equals("who")) {
            assertThat(refused.find("#" + field).attr("value")).isEqualTo(typed);
        }
        assertThat(text(page("/prices"))).contains("None yet.");
    }

    @Test
    void accountsStayInOneCurrency() {
        prices(Map.of("price", "0.011", "who", WHO));
        Page refused = prices(Map.of("price", "0.011", "currency", "usd", "who", WHO));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#currency-fault").text())
                .contains("The accounts of a bench are kept in one currency: USD (EUR).");
        assertThat(refused.find("#currency").attr("value")).isEqualTo("usd");
    }

    @Test
    void aFillIsChargedToTheOwnerAndToSomebodyElseWhenSaid() {
        prices(Map.of("price", "0.011", "minimum", "1.50", "guests", "20", "who", WHO));
        Page done = filled("f-1", "60");
        assertThat(done.find("#payer-part").text()).contains("1.50 EUR, paid by Nora Vale", "L x 0.011 =");
        Page nobody = browser.submit(done, payerForm(done), Map.of("payer", " ", "who", WHO));
        assertThat(nobody.status()).isEqualTo(422);
        assertThat(nobody.find("#payer-fault").text()).isEqualTo("Name who pays.");
        Page billed = browser.submit(nobody, payerForm(nobody), Map.of("payer", "R. Vane", "guest", "yes", "who", WHO));
        assertThat(billed.find("#payer-part").text()).contains("1.80 EUR, paid by R. Vane as a guest");
        Page month = page("/statements");
        assertThat(text(month)).contains("R. Vane", "1.80 EUR").doesNotContain("Nora Vale");
        assertThat(month.find("code").text()).hasSize(64);
    }

    @Test
    void aCorrectionStandsInTheStatementWithItsReversal() {
        prices(Map.of("price", "0.011", "minimum", "1.50", "who", WHO));
        filled("f-1", "60");
        correct(entry("From supply A to 60 bar"), "61");
        correct(entry("finished at 60 bar"), "100");
        Page statement = page("/statements/person?month=" + month() + "&name=Nora+Vale");
        assertThat(statement.document().select("tbody td.num").eachText())
                .hasSize(4)
                .startsWith("1.50 EUR", "-1.50 EUR")
                .satisfies(sums -> assertThat(sums.get(2)).isEqualTo(sums.get(3)));
        assertThat(text(statement)).contains("M-03: Taken back", "M-03: Corrected", "misread", "Head of the chain");
        Page csv = page("/statements/csv?month=" + month());
        assertThat(text(csv)).contains("Nora Vale", "-1.50", "misread");
    }

    @Test
    void theMonthIsSavedAsATableAndAsPdf() throws IOException, InterruptedException {
        prices(Map.of("price", "0.011", "minimum", "1.50", "who", WHO));
        filled("f-1", "60");
        HttpResponse<String> csv = raw("/statements/csv?month=" + month());
        assertThat(csv.headers().firstValue("Content-Type")).contains("text/csv;header=present;charset=utf-8");
        assertThat(csv.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"charges-" + month() + ".csv\"");
        assertThat(csv.body())
                .startsWith("month,person,day,bottle,what,")
                .contains("\r\n", "\"gas [standard litres at 15 C, 1.013 bar]\"", "amount [EUR]");
        HttpResponse<String> pdf = raw("/statements/pdf?month=" + month() + "&name=Nora+Vale");
        assertThat(pdf.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(pdf.body()).startsWith("%PDF");
        assertThat(raw("/statements?month=sometime").statusCode()).isEqualTo(404);
    }

    @Test
    void aMonthIsClosedOnceItIsOverAndAfterAskingOnce() {
        prices(Map.of("price", "0.011", "minimum", "1.50", "who", WHO));
        filled("f-1", "60");
        YearMonth month = month();
        assertThat(text(page("/statements"))).doesNotContain("Close ");
        Page early = page("/statements/close?month=" + month);
        assertThat(text(early)).contains("is not over yet");
        Page refused = browser.submit(early, early.find("form[action$=/close]"), Map.of("who", WHO));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains(month + " is not over yet. Close it after its last day.");
        site.waitMinutes(32 * 24 * 60);
        Page over = page("/statements?month=" + month);
        Page ask = browser.follow(over.find("a[href*=/close]"));
        assertThat(text(ask))
                .contains("1 line", "1 person", "1.50 EUR charged", "A closed month is never opened again.");
        Page unnamed = browser.submit(ask, ask.find("form[action$=/close]"), Map.of("who", ""));
        assertThat(unnamed.find("#who-fault").text()).isEqualTo("Choose who you are.");
        Page closed = browser.submit(unnamed, unnamed.find("form[action$=/close]"), Map.of("who", WHO));
        assertThat(text(closed)).contains("Closed by Tom Reed on").doesNotContain("Close ");
        Page twice = browser.submit(ask, ask.find("form[action$=/close]"), Map.of("who", WHO));
        assertThat(text(twice)).contains("is closed already");
    }

    @Test
    void costsAreEnteredAndWhatCannotBeIsKept() {
        Page form = page("/costs");
        Page first = browser.submit(
                form,
                form.find("form[action$=/costs]"),
                Map.of("kind", "delivery", "currency", "eur", "amount", "12,50", "who", WHO));
        assertThat(text(first)).contains("Delivery", "12.50 EUR");
        Page deposit = browser.submit(
                first,
                first.find("form[action$=/costs]"),
                Map.of("kind", "deposit-paid", "amount", "80", "note", "bill 17", "who", WHO));
        assertThat(deposit.status()).isEqualTo(422);
        assertThat(deposit.find("#serial-fault").text()).contains("A serial number is missing");
        assertThat(deposit.find("#note").attr("value")).isEqualTo("bill 17");
        assertThat(deposit.find("#kind option[selected]").attr("value")).isEqualTo("deposit-paid");
        Page back = browser.submit(
                first, first.find("form[action$=/costs]"), Map.of("kind", "content", "amount", "-5", "who", WHO));
        assertThat(back.find("#amount-fault").text()).contains("-5 EUR is below zero");
        Page insisted = browser.submit(back, back.find("form[action$=/costs]"), Map.of("confirmed", "yes", "who", WHO));
        assertThat(text(insisted)).contains("-5.00 EUR");
        assertThat(text(page("/statements")))
                .contains("Gas bought -5.00 EUR", "Delivery 12.50 EUR", "Left over -7.50 EUR");
    }

    @Test
    void aBillIsHeldAgainstTheDaysASupplyWasHere() {
        LocalDate today = LocalDate.ofInstant(site.now(), ZoneOffset.UTC);
        Page supply = browser.follow(page("/bank").find(".supply h2 a"));
        browser.submit(supply, supply.find("form[action*=/supplies/]"), Map.of("serial", "K 4711", "who", WHO));
        Page rent = page("/rent");
        assertThat(text(rent)).contains("K 4711", "Without a serial number");
        Page unagreed = browser.submit(rent, rent.find("form[action$=/rent]"), Map.of("agreed", "-1", "who", WHO));
        assertThat(unagreed.status()).isEqualTo(422);
        assertThat(unagreed.find("#agreed-fault").text()).contains("-1 is below zero");
        Page agreed = browser.submit(
                unagreed,
                unagreed.find("form[action$=/rent]"),
                Map.of("terms-currency", "EUR", "agreed", "0.25", "who", WHO));
        assertThat(text(agreed)).contains("0.25 EUR a cylinder and day, both the day it came", "0.25 EUR 1 day so far");
        Page wrong = browser.submit(
                agreed,
                agreed.find("form[action$=/bill]"),
                Map.of(
                        "bill",
                        "17",
                        "serial",
                        "k-4711",
                        "from",
                        today.toString(),
                        "to",
                        "x",
                        "days",
                        "many",
                        "who",
                        WHO));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.find("#to-fault").text()).contains("x is no day");
        assertThat(wrong.find("#days-fault").text()).contains("many is no number of days");
        assertThat(wrong.find("#bill-form").attr("open")).isNotNull();
        Page checked = browser.submit(
                wrong,
                wrong.find("form[action$=/bill]"),
                Map.of(
                        "to",
                        today.toString(),
                        "from",
                        today.minusDays(2).toString(),
                        "days",
                        "3",
                        "rate",
                        "0.25",
                        "amount",
                        "0.75",
                        "who",
                        WHO));
        assertThat(text(checked))
                .contains("It was not here on every day charged.", "1 days may be charged: 0.25 EUR.")
                .contains("Charged too much in all: 0.50 EUR");
        assertThat(text(page("/statements"))).contains("Rent 0.75 EUR");
    }

    /** The page of the newest entry that says so. */
    private Page entry(String sentence) {
        Element line = page("/journal").document().select("li").stream()
                .filter(one -> one.text().contains(sentence))
                .findFirst()
                .orElseThrow();
        return browser.follow(Objects.requireNonNull(line.selectFirst("a")));
    }

    private void correct(Page entry, String bar) {
        Page corrected = browser.submit(
                entry, entry.find("form:has([name=reason])"), Map.of("after", bar, "reason", "misread", "who", WHO));
        assertThat(corrected.status()).isEqualTo(200);
    }

    /** A fill of M-03 from 40 bar with supply A to 60 bar, seen on its last page. */
    private Page filled(String id, String bar) {
        site.fill(id, bar);
        return page("/fill/" + id + "/done");
    }

    private static Element payerForm(Page page) {
        return page.find("form[action$=/payer]");
    }

    private Page prices(Map<String, String> typed) {
        Page form = page("/prices");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("currency", "EUR");
        fields.putAll(typed);
        return browser.submit(form, form.find("form[action$=/prices]"), fields);
    }

    private YearMonth month() {
        return YearMonth.from(LocalDate.ofInstant(site.now(), ZoneOffset.UTC));
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url("/at/larkmoor" + path)));
    }

    private HttpResponse<String> raw(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(site.url("/at/larkmoor" + path)))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    private static String text(Page page) {
        return page.document().body().text();
    }
}
