package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.web.Browser.Page;

/** Finding entries of the demo bench, checking its chain, and the steps of a first day. */
final class JournalPageTest {

    @TempDir
    Path directory;

    private final Browser browser = new Browser();
    private Site site;
    private String bench = "";

    @BeforeEach
    void open() {
        site = Site.over(directory);
        Page start = browser.get(URI.create(site.url("/")));
        Page bank = browser.submit(start, start.find("form[action$=/demo]"), Map.of());
        bench = bank.address().getPath().replaceAll("/bank$", "");
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Page page(String path) {
        return browser.get(URI.create(site.url(bench + path)));
    }

    private Page search(String field, String sought) {
        Page all = page("/journal");
        return browser.submit(all, all.find("details.search form"), Map.of(field, sought));
    }

    private static List<String> sentences(Page page) {
        return page.document().select(".journal .what").eachText();
    }

    @Test
    void entriesAreFoundByWords() {
        Page found = search("text", "BROKEN off");
        assertThat(sentences(found)).hasSize(1).allMatch(said -> said.contains("broken off"));
        assertThat(found.find("#text").attr("value")).isEqualTo("BROKEN off");
    }

    @Test
    void entriesAreFoundByWhoEnteredThemAndCounted() {
        Page found = search("person", "Ingrid");
        assertThat(found.document().select(".journal b").eachText())
                .isNotEmpty()
                .allMatch("Ingrid"::equals);
        assertThat(found.find(".facts").text()).startsWith("Ingrid").contains("Fills:");
        Page older = browser.follow(found.find("a[rel=next]"));
        assertThat(older.document().select(".journal b").eachText())
                .isNotEmpty()
                .allMatch("Ingrid"::equals);
    }

    @Test
    void entriesAreFoundByWhatTheyAreAbout() {
        assertThat(sentences(search("group", "corrections"))).hasSize(2);
        assertThat(sentences(search("group", "bottles"))).hasSize(13);
    }

    @Test
    void everyStepOfItsFillsIsFoundForABottle() {
        Page found = search("cylinder", "demo-bottle-k1-front");
        assertThat(sentences(found)).anyMatch(said -> said.contains("From supply"));
    }

    @Test
    void daysBoundTheSearchAndADayThatIsNoneIsSaidBesideItsField() {
        LocalDate today = LocalDate.now(ZoneOffset.UTC);
        assertThat(sentences(search("to", today.toString()))).isNotEmpty();
        assertThat(search("from", today.plusDays(1).toString()).document().text())
                .contains("No entry is like that.");
        Page wrong = search("from", "yesterday");
        assertThat(wrong.find("#from-fault").text()).startsWith("yesterday is no day.");
        assertThat(wrong.find("#from").attr("value")).isEqualTo("yesterday");
    }

    @Test
    void theChainIsCheckedAndItsHeadShown() {
        Page chain = page("/journal/chain");
        assertThat(chain.document().text()).contains("entries are unchanged and in their place");
        String head = chain.find("code").text().replace(" ", "");
        assertThat(head).matches("[0-9a-f]{64}");
        assertThat(page("/journal").document().text()).contains(head);
    }

    @Test
    void anEntryThatWasTamperedWithIsFoundAndTheAdviceSaysWhatToDo() throws SQLException {
        try (Connection database = DriverManager.getConnection("jdbc:sqlite:" + directory.resolve("lowfirst.db"));
                Statement statement = database.createStatement()) {
            statement.execute("DROP TRIGGER entry_is_never_changed");
            statement.execute("UPDATE entry SET author = 'Somebody else' WHERE seq = 17");
        }
        Page chain = page("/journal/chain");
        assertThat(chain.find("section.stop").text())
                .contains("The chain breaks at entry 17: its content is not what was hashed.", "backup");
    }

    @Test
    void theFirstDayLeadsThroughWhatIsMissing() {
        Page steps = page("/first-day");
        assertThat(steps.document().select(".list > li")).hasSize(6);
        assertThat(steps.find("a.act").attr("href")).endsWith("/gauges/one");
        assertThat(steps.document().text()).contains("5 supplies are connected.");
    }
}
