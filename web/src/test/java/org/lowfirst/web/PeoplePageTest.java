package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** People, described through their page; who fills with a second person; who signs what others entered. */
final class PeoplePageTest {

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

    private Page described(Map<String, String> typed) {
        Page form = page("/people/one");
        return browser.submit(form, form.find("form[action$=/people/one]"), typed);
    }

    private static String text(Page page) {
        return page.document().body().text();
    }

    @Test
    void whileNobodyIsResponsibleThePageSaysThatEverybodyIs() {
        assertThat(text(page("/people")))
                .contains("everybody on the list counts as responsible", "Iris Holm", "Only the name is known.");
        assertThat(text(page("/bench"))).contains("until when trainings and check-outs are good");
    }

    @Test
    void aDescribedPersonIsListedWithRolesAndWithWhatIsPast() {
        Page list = described(Map.of(
                "name", "Kai Brand",
                "role-filler", "yes",
                "checkout", today.minusDays(1).toString(),
                "checkout-by", "Iris Holm",
                "training", today.plusDays(20).toString(),
                "training-by", "County course",
                "who", "Iris Holm"));
        assertThat(list.status()).isEqualTo(200);
        assertThat(text(list))
                .contains("Kai Brand", "filler", "says County course", "20 days left", "Have it renewed.")
                .contains("Fills with a second person: the check-out is past.");
        assertThat(page("/fill/plan?bottle=m-03&before=40&target=150&temperature=")
                        .find("select[name=who]")
                        .text())
                .contains("Kai Brand");
    }

    @Test
    void onlyTheResponsibleDescribePeopleOnceThereIsOne() {
        described(Map.of("name", "Ada Winter", "role-responsible", "yes", "who", "Iris Holm"));
        Page refused = described(Map.of("name", "Ben Frost", "role-supervised", "yes", "who", "Tom Reed"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.find("#who-fault").text()).contains("Tom Reed does not");
        assertThat(refused.find("#name").attr("value")).isEqualTo("Ben Frost");
        assertThat(refused.find("input[name=role-supervised]").hasAttr("checked"))
                .isTrue();
        assertThat(text(page("/people"))).doesNotContain("everybody on the list");
    }

    @Test
    void badDaysAndMissingWitnessesAreSaidBesideTheirFieldsAndKept() {
        Page refused = described(
                Map.of("name", "Ben Frost", "training", "31.5.27", "checkout", "2027-05-31", "who", "Iris Holm"));
        assertThat(refused.find("#training-fault").text()).contains("31.5.27 is no day");
        assertThat(refused.find("#checkout-by-fault").text()).isEqualTo("Say who says so.");
        assertThat(refused.find("#training").attr("value")).isEqualTo("31.5.27");
        assertThat(refused.find("#checkout").attr("value")).isEqualTo("2027-05-31");
        Page taken = described(Map.of("name", "Tom Reed", "who", "Iris Holm"));
        assertThat(taken.find("#name-fault").text()).contains("Tom Reed is taken");
    }

    @Test
    void whoFillsUnderSupervisionNamesSomebodyWhoStandsBeside() {
        described(Map.of("name", "Ben Frost", "role-supervised", "yes", "who", "Iris Holm"));
        Page plan = page("/fill/plan?bottle=m-03&before=40&target=150&temperature=");
        assertThat(plan.find("#second-hint").text()).contains("Ben Frost (under supervision)");
        Page alone = browser.submit(plan, plan.find("form[action$=/fill/start]"), Map.of("who", "Ben Frost"));
        assertThat(alone.status()).isEqualTo(422);
        assertThat(alone.find("#second-fault").text()).contains("Ben Frost fills with a second person beside.");
        assertThat(alone.find("select[name=who] option[selected]").text()).isEqualTo("Ben Frost");
        Page filling = browser.submit(
                alone, alone.find("form[action$=/fill/start]"), Map.of("who", "Ben Frost", "second", "Tom Reed"));
        assertThat(filling.status()).isEqualTo(200);
        assertThat(text(page("/journal")))
                .contains("Fill of M-03 begun at 40 bar", "Tom Reed stands beside Ben Frost during this fill.");
    }

    @Test
    void aBenchWithoutSuchPeopleIsAskedNothing() {
        Page plan = page("/fill/plan?bottle=m-03&before=40&target=150&temperature=");
        assertThat(plan.document().select("#second")).isEmpty();
    }

    @Test
    void somebodyElseSignsAnEntryOnce() {
        Page entry = page("/journal/3");
        Page own = browser.submit(entry, entry.find("form[action$=/sign]"), Map.of("signer", "Iris Holm"));
        assertThat(own.status()).isEqualTo(422);
        assertThat(own.find("#signer-fault").text()).isEqualTo("Iris Holm entered this. Somebody else signs it.");
        Page signed = browser.submit(entry, entry.find("form[action$=/sign]"), Map.of("signer", "Tom Reed"));
        assertThat(text(signed)).contains("Signed by Tom Reed");
        Page again = browser.submit(signed, signed.find("form[action$=/sign]"), Map.of("signer", "Tom Reed"));
        assertThat(again.find("#signer-fault").text()).contains("has signed this already");
        assertThat(text(page("/journal"))).contains("Tom Reed signed entry 3.", "Signed by Tom Reed");
    }

    @Test
    void whoLeavesIsGoneFromEveryListForAReason() {
        Page tom = page("/people/one?name=Tom+Reed");
        Page unsaid = browser.submit(tom, tom.find("form[action$=/people/left]"), Map.of("who", "Iris Holm"));
        assertThat(unsaid.find("#reason-fault").text()).contains("Give a reason");
        Page list = browser.submit(
                tom, tom.find("form[action$=/people/left]"), Map.of("who", "Iris Holm", "reason", "moved away"));
        assertThat(list.find("main ul").text()).doesNotContain("Tom Reed");
        assertThat(page("/people/one").find("select[name=who]").text()).doesNotContain("Tom Reed");
        assertThat(page("/people/one?name=Tom+Reed").status()).isEqualTo(404);
        Page iris = page("/people/one?name=Iris+Holm");
        Page last = browser.submit(
                iris, iris.find("form[action$=/people/left]"), Map.of("who", "Iris Holm", "reason", "tired"));
        assertThat(last.find("#reason-fault").text()).contains("the last on the list");
    }
}
