package org.lowfirst.web;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page at 320 px: what WCAG 2.2, 1.4.10, asks of a window of 1280 px at 400 %. */
final class ReflowBrowserTest {

    private static final List<String> PAGES = List.of(
            "/benches",
            "/new",
            "/at/larkmoor/bank",
            "/at/larkmoor/readings",
            "/at/larkmoor/supplies/new",
            "/at/larkmoor/supplies/s-A",
            "/at/larkmoor/supplies/s-A/stand",
            "/at/larkmoor/exchange",
            "/at/larkmoor/exchange/begin?supply=s-C",
            "/at/larkmoor/arrangement",
            "/at/larkmoor/two-open",
            "/at/larkmoor/fill/past",
            "/at/larkmoor/fill",
            "/at/larkmoor/fill/plan?bottle=m-03",
            "/at/larkmoor/fill/plan?bottle=m-03&before=40&target=150",
            "/at/larkmoor/fill/plan?bottle=m-03&before=40&target=200",
            "/at/larkmoor/fill/plan?bottle=m-03&before=1450&target=",
            "/at/larkmoor/bottles",
            "/at/larkmoor/bottles/new",
            "/at/larkmoor/bottles/m-03",
            "/at/larkmoor/journal",
            "/at/larkmoor/journal/2",
            "/at/larkmoor/journal?person=Iris+Holm&to=tomorrow",
            "/at/larkmoor/journal/chain",
            "/at/larkmoor/papers",
            "/at/larkmoor/papers/bottle-tags?base=here",
            "/at/larkmoor/data",
            "/at/larkmoor/bottles/many",
            "/at/larkmoor/first-day",
            "/at/larkmoor/settings",
            "/at/larkmoor/prices",
            "/at/larkmoor/statements",
            "/at/larkmoor/costs",
            "/at/larkmoor/rent",
            "/at/larkmoor/gauges",
            "/at/larkmoor/gauges/one",
            "/at/larkmoor/settle",
            "/at/larkmoor/settle?bottle=m-03&reading=180&gas=50",
            "/at/larkmoor/temperatures?cylinder=b.m-03&reading=150&temperature=15",
            "/at/larkmoor/temperatures?reading=150&temperature=-300",
            "/at/larkmoor/leak-check",
            "/at/larkmoor/warm-stops",
            "/at/larkmoor/supplies/s-A/delivery",
            "/at/larkmoor/nowhere");

    /** The demo bench has more of everything; it comes and goes in one step. */
    @Test
    void theDemoBenchFitsAndGoesAgain(@TempDir Path directory) {
        try (Site site = Site.over(directory);
                Visitor iris = Visitor.at(site, 320, 568)) {
            iris.open("/");
            iris.press("Load the demo bench");
            iris.sees("Bank");
            for (String page : List.of("/at/demo/bank", "/at/demo/bottles", "/at/demo/fill", "/at/demo/journal")) {
                iris.open(page);
                iris.findsNothingInTheWay();
                iris.findsTargetsLargeEnough();
            }
            iris.open("/at/demo/settings");
            iris.press("Remove the demo bench");
            iris.sees("Nothing here yet");
        }
    }

    @Test
    void noPageScrollsSidewaysAndEveryTargetIsLargeEnough(@TempDir Path directory) {
        try (Site site = Site.withSample(directory);
                Visitor iris = Visitor.at(site, 320, 568)) {
            for (String page : PAGES) {
                iris.open(page);
                iris.findsNothingInTheWay();
                iris.findsTargetsLargeEnough();
            }
        }
    }
}
