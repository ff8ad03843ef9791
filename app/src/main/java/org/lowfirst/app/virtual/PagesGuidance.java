package org.lowfirst.app.virtual;

import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;
import org.lowfirst.app.virtual.PageBrowser.Page;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.StatedPressure;

/** The guide through the pages, in bar: links are followed, forms filled in and sent. */
public final class PagesGuidance implements Guidance {

    private static final int OK = 200;

    private final PageBrowser browser = new PageBrowser();
    private final URI bench;
    private final String person;
    private final List<String> interruptions = new ArrayList<>();
    private @Nullable Page page;

    /** @param bench address of the bench, e.g. http://127.0.0.1:8701/at/x/ */
    public PagesGuidance(URI bench, String person) {
        this.bench = bench;
        this.person = person;
    }

    /** Headings of the pages that asked how the valves stand. */
    public List<String> interruptions() {
        return interruptions;
    }

    /** Types readings of supplies, by name, into the page for readings. */
    public void enterReadings(Map<String, StatedPressure> readings, String temperature) {
        Page form = browser.get(bench.resolve("readings"));
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("temperature", temperature);
        typed.put("who", person);
        readings.forEach((name, shown) -> {
            Element label = form.document().select("label[for]").stream()
                    .filter(any -> any.text().matches("\\d+ · " + name + "\\b.*"))
                    .findFirst()
                    .orElseThrow(() ->
                            new IllegalStateException(form.document().body().text()));
            typed.put(label.attr("for"), shown.value().toPlainString());
        });
        Page saved = insisting(form, "form[action$=/readings]", typed);
        require(saved.status() == OK && saved.address().getPath().endsWith("/bank"), saved);
    }

    @Override
    public NextStep start(FillOrder order) {
        Page choose = browser.get(bench.resolve("fill"));
        Page ask = browser.follow(choose.document().select("a.choice").stream()
                .filter(link ->
                        Objects.requireNonNull(link.selectFirst("b")).text().equals(order.bottle()))
                .findFirst()
                .orElseThrow());
        Page plan = browser.submit(
                ask,
                ask.find("form[action$=/fill/plan]"),
                Map.of(
                        "before", order.before().value().toPlainString(),
                        "target", order.target().value().toPlainString(),
                        "temperature", order.temperature().value().toPlainString()));
        return step(insisting(looked(plan), "form[action$=/fill/start]", Map.of("who", person)));
    }

    /** Answers the questions about the bottle, when they are asked: there is nothing to be seen. */
    private Page looked(Page shown) {
        Element form = shown.document().selectFirst("form[action$=/fill/look]");
        if (form == null) {
            return shown;
        }
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("who", person);
        form.select("input[type=radio]").forEach(radio -> typed.put(radio.attr("name"), "no"));
        return browser.submit(shown, form, typed);
    }

    @Override
    public NextStep done(NextStep step) {
        return step(browser.follow(here().find(".thumb a.act")));
    }

    @Override
    public @Nullable NextStep read(NextStep step, StatedPressure bottle, @Nullable StatedPressure supply) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("bottle", bottle.value().toPlainString());
        if (supply != null) {
            typed.put("supply", supply.value().toPlainString());
        }
        Page next = insisting(here(), "form.thumb", typed);
        if (next.address().getPath().endsWith("/done")) {
            page = next;
            return null;
        }
        return step(next);
    }

    /** Sends a form, and once more with the tick that insists where the page offers it. */
    private Page insisting(Page from, String form, Map<String, String> typed) {
        Page next = browser.submit(from, from.find(form), typed);
        Element tick = next.document().selectFirst(form + " input[name=confirmed]");
        if (tick == null) {
            return next;
        }
        Map<String, String> again = new LinkedHashMap<>(typed);
        again.put("confirmed", tick.attr("value"));
        return browser.submit(next, next.find(form), again);
    }

    /** Opens the address again, as a phone does that was in a pocket. */
    @Override
    public NextStep comeBack(OpenValves valves) {
        Page asked = browser.get(here().address());
        interruptions.add(asked.find("h1").text());
        Set<String> open = new TreeSet<>();
        if (valves.bottle()) {
            open.add("Bottle");
        }
        if (valves.transfer()) {
            open.add("Transfer");
        }
        if (!valves.supply().isEmpty()) {
            open.add("Supply " + valves.supply());
        }
        Element choice = asked.document().select("a.stand").stream()
                .filter(link -> boxes(link).equals(open))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        open + " is not among:\n" + asked.document().body().text()));
        return step(browser.follow(choice));
    }

    private static Set<String> boxes(Element link) {
        Set<String> names = new TreeSet<>();
        link.select(".box:not(.shut)").forEach(box -> names.add(box.ownText().strip()));
        return names;
    }

    /** What the page told to do, and what it warned of; empty before and after a fill. */
    public String told() {
        if (page == null) {
            return "";
        }
        List<String> said = new ArrayList<>(page.document().select("p.do").eachText());
        said.addAll(page.document().select("p.stop[role=alert] b").eachText());
        return String.join(" ", said);
    }

    /** What the page must show for the guide to go on. */
    private static void require(boolean holds, Page page) {
        if (!holds) {
            throw new IllegalStateException("The page at " + page.address() + " (" + page.status() + ") says:\n"
                    + page.document().body().text());
        }
    }

    private Page here() {
        return Objects.requireNonNull(page);
    }

    private NextStep step(Page shown) {
        require(shown.status() == OK, shown);
        page = shown;
        Position at = Position.parse(parameter(shown.address(), "at"));
        String supply = at.supply() == null ? "" : at.supply().value().replaceFirst("s-", "");
        Element never = shown.find("section.two .never .big");
        Element expected = shown.document().selectFirst("section.two div:not(.never) .big");
        String told = shown.find("p.do").text();
        NextStep step = new NextStep(
                resolved(at, shown), supplyIn(told, supply), expected == null ? null : bar(expected), bar(never));
        if (step.position().phase() == Phase.OPEN_SUPPLY) {
            require(told.contains(step.supply()), shown);
        }
        return step;
    }

    /** The address may say "whatever comes next"; the link or the form of the page says where that is. */
    private static Position resolved(Position at, Page shown) {
        if (at.phase() != Phase.OPEN_SUPPLY || at.supply() != null) {
            return at;
        }
        Position next =
                Position.parse(parameter(URI.create(shown.find(".thumb a.act").absUrl("href")), "at"));
        return next.phase() == Phase.CRACK_TRANSFER
                ? new Position(next.stage(), Phase.OPEN_SUPPLY, next.supply())
                : new Position(next.stage(), Phase.SHUT_BOTTLE, null);
    }

    private static String supplyIn(String told, String known) {
        Matcher named = Pattern.compile("[Ss]upply (\\w+)").matcher(told);
        return known.isEmpty() && named.find() ? named.group(1) : known;
    }

    private static GaugePressure bar(Element number) {
        return GaugePressure.ofBar(Double.parseDouble(number.text().replace(",", "")));
    }

    private static String parameter(URI address, String name) {
        for (String pair : address.getQuery().split("&")) {
            if (pair.startsWith(name + "=")) {
                return pair.substring(name.length() + 1);
            }
        }
        throw new IllegalStateException(address + " does not say " + name + ".");
    }
}
