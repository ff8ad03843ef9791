package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** A squad's day through the pages: a group, its bottles, the check of a shift, a swap, the refill list. */
final class ReadyPageTest {

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

    private Page send(String path, String action, Map<String, String> typed) {
        Page form = page(path);
        Map<String, String> all = new HashMap<>(Map.of("who", "Tom Reed"));
        all.putAll(typed);
        return browser.submit(form, form.find("form[action$=" + action + "]"), all);
    }

    private Page group(String floor, String wish) {
        return send("/groups/one", "/groups/one", Map.of("name", "Rescue 1", "floor", floor, "wish", wish));
    }

    /** Registers a bottle that reads so much; answers its id. */
    private String bottle(String name, String reading) {
        Page list = send("/bottles/new", "/bottles/new", Map.of("name", name, "volume", "5", "marked", "200"));
        assertThat(list.status()).isEqualTo(200);
        String id = page("/bottles").document().select("h2 a").stream()
                .filter(link -> link.text().equals(name))
                .map(link -> link.attr("href").replaceFirst(".*/", ""))
                .findFirst()
                .orElseThrow();
        assertThat(read(id, reading).status()).isEqualTo(200);
        return id;
    }

    private Page read(String id, String reading) {
        return send("/ready/read?bottle=" + id, "/ready/read", Map.of("reading", reading));
    }

    private Page place(String id, String where) {
        return send("/groups/bottle?bottle=" + id, "/groups/bottle", Map.of("group", "Rescue 1", "place", where));
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    @Test
    void aBenchWithoutGroupsIsLedToThem() {
        assertThat(text(page("/ready"))).contains("No group of bottles is kept ready yet");
        assertThat(page("/bottles").find("a[href$=/ready]").text()).isEqualTo("Shift check");
    }

    @Test
    void aShiftIsCheckedBottleAfterBottle() {
        group("100", "150");
        place("m-03", "in-service");
        String spare = bottle("SP-1", "160");
        place(spare, "spare");
        assertThat(text(page("/ready"))).contains("No shift has begun", "Floor 100 bar, wish 150 bar", "Ready: 0 of 1");
        site.waitMinutes(5);
        Page begun = send("/ready", "/ready/shift", Map.of());
        assertThat(text(begun)).contains("Shift begun just now", "Not read in this shift");
        Page first = browser.follow(begun.find(".thumb a"));
        assertThat(first.find("h1").text()).isEqualTo("M-03");
        assertThat(text(first)).contains("2 to go", "Rescue 1: Floor 100 bar, wish 150 bar");
        Page second = browser.submit(
                first, first.find("form[action$=/ready/read]"), Map.of("reading", "62", "who", "Tom Reed"));
        assertThat(second.find("h1").text()).isEqualTo("SP-1");
        Page done = browser.submit(
                second, second.find("form[action$=/ready/read]"), Map.of("reading", "160", "who", "Tom Reed"));
        assertThat(done.find("h1").text()).isEqualTo("Shift check");
        assertThat(text(done)).contains("Swap: below the floor", "62 bar", "Take SP-1 instead");
        assertThat(done.document().select(".thumb a")).isEmpty();
        Page swapped = browser.submit(done, done.find("form[action$=/ready/swap]"), Map.of("who", "Tom Reed"));
        assertThat(text(swapped)).contains("Ready: 1 of 1", "Spares to fill or to read");
        assertThat(text(page("/journal"))).contains("SP-1 went into service, M-03 came out.", "Shift begun.");
        assertThat(text(page("/groups"))).contains("Rescue 1: Spare", "Rescue 1: In service");
    }

    @Test
    void withoutASpareThatHoldsTheWishThePageSaysSo() {
        group("100", "150");
        place("m-03", "in-service");
        assertThat(text(page("/ready"))).contains("Swap: below the floor", "No spare of this group holds the wish.");
    }

    @Test
    void theRefillListNamesWhatLacksAndWhatTheRulesRefuse() {
        group("100", "150");
        String unmarked = bottle("R-1", "120");
        place(unmarked, "in-service");
        Page refill = page("/ready/refill");
        assertThat(refill.find("section.stop").text()).contains("the rules refuse a fill today", "R-1");
        read(unmarked, "150");
        assertThat(text(page("/ready/refill"))).contains("Every bottle that was read holds its wish.");
    }

    @Test
    void badInputIsSaidBesideItsFieldAndKept() {
        Page swapped = group("160", "150");
        assertThat(swapped.status()).isEqualTo(422);
        assertThat(swapped.find("#floor-fault").text())
                .isEqualTo("The floor of 160 bar is above the wish of 150 bar. Swap them, or check the unit.");
        assertThat(swapped.find("#floor").attr("value")).isEqualTo("160");
        assertThat(group("1450", "x").find("#floor-fault").text()).contains("If it is psi");
        Page odd = send(
                "/groups/one",
                "/groups/one",
                Map.of("name", "Rescue 1", "floor", "100", "wish", "150", "priority", "1.5"));
        assertThat(odd.find("#priority-fault").text()).contains("whole number from 1");
        group("100", "150");
        assertThat(group("100", "150").find("#name-fault").text()).contains("is taken");
        place("m-03", "in-service");
        Page reading = read("m-03", "620");
        assertThat(reading.status()).isEqualTo(422);
        assertThat(reading.find("#reading").attr("value")).isEqualTo("620");
    }

    @Test
    void aWishABottleCanNeverHoldIsAskedAbout() {
        group("200", "250");
        Page asked = place("m-03", "in-service");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.find("#group-fault").text())
                .isEqualTo("The group wishes 250 bar, but M-03 is marked 200 bar and can never hold that.");
        Page insisted = browser.submit(
                asked, asked.find("form[action$=/groups/bottle]"), Map.of("confirmed", "yes", "who", "Tom Reed"));
        assertThat(insisted.status()).isEqualTo(200);
    }

    @Test
    void aGroupThatEndsLeavesItsBottlesInTheRegister() {
        group("100", "150");
        place("m-03", "in-service");
        Page groups = send("/groups/one?name=Rescue+1", "/groups/ended", Map.of());
        assertThat(text(groups)).contains("There is no group yet.");
        assertThat(text(page("/bottles"))).contains("M-03");
    }
}
