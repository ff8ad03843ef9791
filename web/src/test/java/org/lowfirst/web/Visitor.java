package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;

/** Somebody at a browser, who sees what people see: labels, buttons, headings, text. */
final class Visitor implements AutoCloseable {

    private final Site site;
    private final BrowserContext context;
    private final Page page;
    private boolean audits = true;

    private Visitor(Site site, BrowserContext context) {
        this.site = site;
        this.context = context;
        this.page = context.newPage();
    }

    static Visitor at(Site site, int width, int height) {
        return new Visitor(site, Browsing.context(width, height, true));
    }

    static Visitor withoutScripts(Site site) {
        return new Visitor(site, Browsing.context(360, 740, false));
    }

    Page page() {
        return page;
    }

    /** @return HTTP status of the page */
    int open(String path) {
        Response response = page.navigate(site.url(path));
        return response == null ? 0 : response.status();
    }

    void type(String label, String text) {
        page.getByRole(AriaRole.TEXTBOX, new Page.GetByRoleOptions().setName(label))
                .first()
                .fill(text);
    }

    void choose(String label, String option) {
        page.getByLabel(label).first().selectOption(option);
    }

    /** Presses a button or link by its words and waits for what follows. */
    void press(String words) {
        Locator act = page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(words))
                .or(page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(words)));
        act.first().click();
        page.waitForLoadState();
    }

    /** Waits for the page with this heading. */
    void sees(String heading) {
        page.getByRole(
                        AriaRole.HEADING,
                        new Page.GetByRoleOptions().setName(heading).setLevel(1))
                .first()
                .waitFor();
    }

    /** Waits for words anywhere in the page. */
    void reads(String words) {
        page.locator("main").getByText(words).locator("visible=true").first().waitFor();
    }

    String text() {
        return page.locator("main").innerText();
    }

    /** The same, without auditing the accessibility of pages that another visitor audits. */
    Visitor withoutAudit() {
        audits = false;
        return this;
    }

    /** No violation of the accessibility rules, no sideways scrolling. */
    void findsNothingInTheWay() {
        doesNotScrollSideways();
        if (audits) {
            audit();
        }
    }

    private void audit() {
        AxeResults results = new AxeBuilder(page).analyze();
        assertThat(results.getViolations())
                .as(page.url())
                .extracting(rule -> rule.getId() + " "
                        + rule.getNodes().stream().map(node -> node.getHtml()).toList())
                .isEmpty();
    }

    private void doesNotScrollSideways() {
        Object over = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) over).intValue()).as("sideways at " + page.url()).isZero();
    }

    /** Everything that can be pressed is 48 px high and wide at least, unless it stands in a sentence. */
    void findsTargetsLargeEnough() {
        Object small = page.evaluate("""
                () => [...document.querySelectorAll('a, button, input:not([type=hidden]), select, textarea, summary')]
                    .filter(e => e.offsetParent !== null && !e.closest('.skip') && !e.matches('.pick input'))
                    .map(e => ({e, r: e.getBoundingClientRect()}))
                    .filter(x => x.r.height < 47.5 || x.r.width < 47.5)
                    .filter(x => x.r.bottom > 0)
                    .map(x => x.e.outerHTML.slice(0, 120) + ' ' + Math.round(x.r.width) + 'x' + Math.round(x.r.height))
                """);
        assertThat((List<?>) small).as(page.url()).isEmpty();
    }

    /** The connection to the bench is gone, or back. */
    void link(boolean there) {
        context.setOffline(!there);
    }

    @Override
    public void close() {
        context.close();
    }
}
