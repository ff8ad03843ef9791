package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.file.Path;
import java.time.Year;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole day at a new bench, on a phone: set up, three fills, one of them not as planned, a bottle that is refused, an exchange,
 * a correction, and the statement that follows from it all. Test interval of ten years: packing instruction P200 (from memory).
 */
final class DayBrowserTest {

    @Test
    void aDayFromAnEmptyPageToAStatement(@TempDir Path directory) {
        try (Site site = Site.over(directory);
                Visitor iris = Visitor.at(site, 360, 740).withoutAudit()) {
            setsUp(iris);
            connects(iris, "A", "62");
            connects(iris, "B", "118");
            connects(iris, "C", "190");
            String place = iris.page().url().replaceFirst("/bank.*", "");
            setsPrices(iris, place);

            int year = Year.now(ZoneOffset.UTC).getValue();
            String first = addsABottle(iris, place, "M-03", year - 2);
            String second = addsABottle(iris, place, "M-04", year - 3);
            String third = addsABottle(iris, place, "M-05", year - 4);
            String old = addsABottle(iris, place, "M-19", year - 11);
            isRefused(iris, place, old);

            fills(iris, place, first, "60", "113", "150");
            fills(iris, place, second, "52", "60", "109", "150");
            fills(iris, place, third, "57", "106", "150");
            exchanges(iris, place);
            corrects(iris, place);
            readsTheStatement(iris, place);
        }
    }

    private static void setsUp(Visitor iris) {
        iris.open("/new");
        iris.type("Name of the bench", "Larkmoor Gliders");
        iris.type("Usual temperature", "20");
        iris.type("A full supply reads", "200");
        iris.type("People", "Iris Holm\nTom Reed");
        iris.press("Set up this bench");
        iris.sees("Bank");
    }

    private static void connects(Visitor iris, String name, String reading) {
        iris.press("Connect a supply");
        iris.sees("Connect a supply");
        iris.type("Name", name);
        iris.type("Stamped or measured", "50");
        iris.type("Marked service pressure", "200");
        iris.type("Gauge shows", reading);
        iris.choose("Entered by", "Iris Holm");
        iris.press("Connect it");
        iris.sees("Bank");
    }

    private static void setsPrices(Visitor iris, String place) {
        iris.page().navigate(place + "/prices");
        iris.sees("Prices");
        iris.type("Currency", "EUR");
        iris.type("Price of one", "0,011");
        iris.type("Least charge for a fill", "1.50");
        iris.choose("Entered by", "Tom Reed");
        iris.press("Set these prices");
        iris.reads("in force");
    }

    /** @return its id */
    private static String addsABottle(Visitor iris, String place, String name, int tested) {
        iris.page().navigate(place + "/bottles/new");
        iris.type("Name or number", name);
        iris.type("Stamped or measured", "5");
        iris.type("Marked service pressure", "200");
        iris.type("Usual target", "150");
        iris.type("Owner", "Wren Vale");
        iris.press("Save and fill");
        iris.sees(name);
        String id = iris.page().url().replaceFirst(".*bottle=", "").replaceFirst("&.*", "");
        iris.page()
                .navigate(place + "/bottles/" + id + "/stamp?convention=european&line="
                        + "ISO%209809-1%20PH%20300%20BAR%205,0%20L%20" + tested + "/04");
        iris.reads("Part by part");
        iris.page().locator("#gas").selectOption("oxygen");
        pick(iris, "oxygen-clean", "yes");
        pick(iris, "other-service", "no");
        pick(iris, "consent", "yes");
        iris.choose("Entered by", "Iris Holm");
        iris.press("Enter the marking");
        iris.reads("Saved as entry");
        return id;
    }

    private static void pick(Visitor iris, String field, String value) {
        iris.page().locator("[name=" + field + "][value=" + value + "]").first().check();
    }

    private static void isRefused(Visitor iris, String place, String bottle) {
        iris.page().navigate(place + "/fill/plan?bottle=" + bottle + "&before=40&target=150");
        iris.reads("May be used up, no fill");
        assertThat(iris.text()).doesNotContain("Open supply", "gauges meet");
        assertThat(iris.page().locator("form[action$='/fill/start']").count()).isZero();
    }

    /** Ends of the stages as the gauge shows them; where one is not what was planned, the rest is planned anew. */
    private static void fills(Visitor iris, String place, String bottle, String... readings) {
        iris.page().navigate(place + "/fill/plan?bottle=" + bottle + "&before=40&target=150");
        looks(iris);
        iris.reads("Fills left like this one");
        iris.press("Start");
        iris.press("Connected, all shut");
        iris.press("Bottle is open");
        for (String reading : readings) {
            iris.reads("slowly.");
            iris.page().locator("main button.act, main a.act").first().click();
            iris.reads("Crack the transfer valve");
            iris.press("Gas is flowing");
            iris.reads("Watch the bottle's gauge.");
            iris.press("It stands at");
            iris.reads("Shut the transfer valve.");
            iris.press("Transfer is shut");
            iris.reads("Before another one is opened.");
            iris.press("is shut");
            iris.reads("Read the gauges.");
            iris.type("Bottle gauge", reading);
            iris.press("Save and go on");
        }
        iris.reads("Shut the bottle's valve.");
        iris.press("Bottle is shut");
        iris.press("Vented, disconnected");
        iris.type("Bottle gauge", "149");
        iris.press("Finish the fill");
        iris.sees("Filled: ");
    }

    private static void looks(Visitor iris) {
        iris.reads("Look at the bottle");
        assertThat(iris.page().locator("ul.over li").all())
                .allMatch(Locator::isVisible)
                .hasSize(10);
        iris.choose("Entered by", "Iris Holm");
        iris.press("None of these seen");
    }

    private static void exchanges(Visitor iris, String place) {
        iris.page().navigate(place + "/bank");
        iris.press("Exchange a supply");
        iris.sees("Which supply goes back?");
        iris.press("A, ");
        iris.choose("Entered by", "Tom Reed");
        iris.press("Exchange A");
        iris.press("All are shut");
        iris.type("Supply A, bar", "57");
        iris.press("Save, and it is shut again");
        iris.press("Vented, gauges at zero");
        iris.press("It is off");
        iris.sees("In the place of A");
        iris.type("Name", "A2");
        iris.type("Gauge shows", "200");
        iris.choose("Entered by", "Tom Reed");
        iris.press("It stands connected");
        iris.sees("A2 took the place of A");
        assertThat(iris.text()).contains("Labels 1, 2, 3 follow");
    }

    private static void corrects(Visitor iris, String place) {
        iris.page().navigate(place + "/journal");
        iris.reads("Fill of M-05 finished at 149 bar");
        iris.page()
                .locator("ol.journal li")
                .filter(new Locator.FilterOptions().setHasText("Fill of M-05 finished"))
                .locator("a")
                .first()
                .click();
        iris.type("Bottle after", "147");
        iris.type("Reason", "misread the gauge");
        iris.press("Correct");
        iris.reads("corrected by entry");
    }

    private static void readsTheStatement(Visitor iris, String place) {
        iris.page().navigate(place + "/statements");
        iris.sees("Statements");
        iris.press("Wren Vale");
        iris.reads("misread the gauge");
        assertThat(iris.text()).contains("M-03", "M-04", "M-05").doesNotContain("M-19");
    }
}
