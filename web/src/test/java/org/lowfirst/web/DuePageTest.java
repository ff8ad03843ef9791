package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** What falls due, as a page and as a calendar file that a library of others reads (biweekly 0.6.8, RFC 5545). */
final class DuePageTest {

    private final LocalDate today = LocalDate.now(ZoneOffset.UTC);

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

    private Page described(String name, LocalDate last, String months) {
        return described(Map.of("name", name, "last", last.toString(), "months", months));
    }

    private Page described(Map<String, String> typed) {
        Page form = page("/due/equipment");
        Map<String, String> all = new HashMap<>(Map.of("source", "maker's sheet", "who", "Tom Reed"));
        all.putAll(typed);
        return browser.submit(form, form.find("form[action$=/due/equipment]"), all);
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    private HttpResponse<String> calendar() throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(site.url("/at/larkmoor/due.ics")))
                                .build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    private static List<VEvent> events(String text) {
        List<List<ParseWarning>> warnings = new ArrayList<>();
        List<ICalendar> calendars = Biweekly.parse(text).warnings(warnings).all();
        assertThat(calendars).hasSize(1);
        assertThat(warnings).allSatisfy(found -> assertThat(found).isEmpty());
        List<VEvent> events = calendars.get(0).getEvents();
        if (!events.isEmpty()) {
            // It takes time zones out of the components, so one with nothing else seems empty to it.
            assertThat(calendars.get(0).validate(ICalVersion.V2_0).toString()).isEmpty();
        }
        return events;
    }

    @Test
    void bottlesWithoutAMarkingAreNamedAsSuch() {
        Page form = page("/bottles/new");
        browser.submit(
                form,
                form.find("form[action$=/bottles/new]"),
                Map.of("name", "R-9", "volume", "5", "marked", "200", "who", "Tom Reed"));
        assertThat(text(page("/due"))).contains("No marking entered", "R-9");
        assertThat(text(page("/bench"))).contains("hoses, gauges, relief valves");
    }

    /** Ten years for oxygen in steel: ADR P200 (10), table 1, UN 1072; the last good day is the last of the month. */
    @Test
    void aMarkedBottleFallsDueByTheRuleBookInForce() {
        YearMonth tested = YearMonth.from(today).minusYears(4);
        Page due = page("/due");
        assertThat(due.find("main details").text())
                .contains("Test of M-03", "P200")
                .contains(String.valueOf(tested.plusYears(10).getYear()));
        assertThat(due.find("main details a").attr("href")).endsWith("/bottles/m-03");
    }

    @Test
    void whatIsPastComesFirstThenWhatEndsSoon() {
        described("Hose 1", today.minusMonths(13), "12");
        described("Hose 2", today.minusMonths(11), "12");
        Page due = described("Hose 3", today, "60");
        assertThat(due.status()).isEqualTo(200);
        assertThat(due.find("#past + ul").text()).contains("Hose: Hose 1", "Was good until", "maker's sheet");
        assertThat(due.find("#soon + ul").text()).contains("Hose: Hose 2").doesNotContain("Hose 3");
        assertThat(due.find("main details").text()).contains("Later: 2", "Hose: Hose 3");
        assertThat(due.document().select("#past + ul svg").attr("aria-hidden")).isEqualTo("true");
    }

    @Test
    void aHoseThatWasDoneFallsDueAnIntervalLater() {
        Page due = described("Hose 1", today.minusMonths(13), "12");
        Page hose = browser.follow(due.find("#past + ul a"));
        Page done = browser.submit(hose, hose.find("form[action$=/due/done]"), Map.of("who", "Tom Reed"));
        assertThat(done.document().select("#past")).isEmpty();
        assertThat(done.find("main details").text()).contains("Hose: Hose 1");
        Page again = page("/due/equipment?name=Hose+1");
        Page ahead = browser.submit(
                again,
                again.find("form[action$=/due/done]"),
                Map.of("who", "Tom Reed", "day", today.plusDays(3).toString()));
        assertThat(ahead.status()).isEqualTo(422);
        assertThat(ahead.find("#day-fault").text()).contains("is still to come");
        Page end = browser.submit(
                hose, hose.find("form[action$=/due/ended]"), Map.of("who", "Tom Reed", "reason", "cut up"));
        assertThat(text(end)).doesNotContain("Hose 1");
        assertThat(text(page("/journal"))).contains("Upkeep of Hose 1 ended: cut up.");
    }

    @Test
    void badInputIsSaidBesideItsFieldAndKept() {
        Page refused = described(Map.of("name", "Hose 1", "last", "14.3.26", "months", "2.5", "source", " "));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#last-fault").text()).contains("14.3.26 is no day");
        assertThat(refused.find("#months-fault").text())
                .isEqualTo("2.5 months cannot be. Type a whole number from 1 to 180.");
        assertThat(refused.find("#source-fault").text()).isEqualTo("Say who says so.");
        assertThat(refused.find("#last").attr("value")).isEqualTo("14.3.26");
        described("Hose 1", today, "12");
        assertThat(described("Hose 1", today, "12").find("#name-fault").text()).contains("is taken");
    }

    @Test
    void aPersonsCheckOutFallsDueToo() {
        Page form = page("/people/one?name=Tom+Reed");
        browser.submit(
                form,
                form.find("form[action$=/people/one]"),
                Map.of(
                        "checkout",
                        today.minusDays(1).toString(),
                        "checkout-by",
                        "Iris Holm",
                        "training",
                        today.plusDays(30).toString(),
                        "training-by",
                        "County course",
                        "who",
                        "Iris Holm"));
        Page due = page("/due");
        assertThat(due.find("#past + ul").text()).contains("Check-out of Tom Reed", "1 day ago", "Iris Holm");
        assertThat(due.find("#soon + ul").text()).contains("Training of Tom Reed", "30 days left");
    }

    @Test
    void theCalendarIsReadByAnotherLibraryAndItsEventsKeepTheirIds() throws IOException, InterruptedException {
        described("Hose; the long, \\ gray one at the bench beside the door, which nobody ever looks at", today, "12");
        described("Schläuche, größere", today.minusMonths(1), "6");
        HttpResponse<String> answer = calendar();
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).isEqualToIgnoringCase("text/calendar;charset=utf-8"));
        assertThat(answer.body().lines())
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
        List<VEvent> events = events(answer.body());
        assertThat(events)
                .extracting(event -> event.getSummary().getValue())
                .containsExactly(
                        "Hose: Schläuche, größere",
                        "Hose: Hose; the long, \\ gray one at the bench beside the door, which nobody ever looks at",
                        "Test of M-03");
        assertThat(answer.body())
                .contains("DTSTART;VALUE=DATE:" + DateTimeFormatter.BASIC_ISO_DATE.format(today.plusMonths(12)));
        Page hose = page("/due/equipment?name=Schl%C3%A4uche%2C+gr%C3%B6%C3%9Fere");
        browser.submit(hose, hose.find("form[action$=/due/done]"), Map.of("who", "Tom Reed"));
        List<VEvent> moved = events(calendar().body());
        assertThat(moved)
                .extracting(event -> event.getUid().getValue())
                .containsExactlyInAnyOrderElementsOf(
                        events.stream().map(event -> event.getUid().getValue()).toList());
    }

    @Test
    void anEmptyCalendarIsStillOne() throws IOException, InterruptedException {
        Page bottle = page("/bottles/m-03");
        browser.submit(bottle, bottle.find("form[action$=/retire]"), Map.of("reason", "sold", "who", "Tom Reed"));
        assertThat(events(calendar().body())).isEmpty();
        assertThat(calendar().body()).contains("BEGIN:VTIMEZONE");
        assertThat(text(page("/due"))).contains("served on this computer only", "/at/larkmoor/due.ics");
    }
}
