package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole exchange by thumb on a narrow phone. The bank that cannot reach: P 44, Q 97, R 131 bar. */
final class ExchangeBrowserTest {

    @Test
    void theLowestGoesBackAndAnotherTakesItsPlace(@TempDir Path directory) {
        try (Site site = Site.withSampleThatCannotReach(directory);
                Visitor tom = Visitor.at(site, 320, 640)) {
            tom.open("/at/larkmoor/bank");
            tom.press("Exchange a supply");
            tom.sees("Which supply goes back?");
            tom.press("P, 44 bar");
            tom.sees("Exchange supply P?");
            tom.choose("Entered by", "Tom Reed");
            tom.press("Exchange P");
            tom.reads("Shut every valve.");
            passes(tom);
            tom.press("All are shut");
            tom.reads("and read its gauge");
            tom.type("Supply P, bar", "44");
            passes(tom);
            tom.press("Save, and it is shut again");
            tom.reads("Vent the lines.");
            tom.press("Vented, gauges at zero");
            tom.reads("Loosen supply P");
            tom.press("It is off");
            tom.sees("In the place of P");
            passes(tom);
            tom.type("Name", "P2");
            tom.type("Gauge shows", "200");
            tom.type("Lot or certificate number", "LOT 7");
            tom.choose("Entered by", "Tom Reed");
            tom.press("It stands connected");
            tom.sees("P2 took the place of P");
            passes(tom);
            assertThat(tom.text()).contains("Labels 1, 2, 3 follow", "In order: Q 97 bar, R 131 bar, P2 200 bar.");
        }
    }

    private static void passes(Visitor visitor) {
        visitor.findsNothingInTheWay();
        visitor.findsTargetsLargeEnough();
    }
}
