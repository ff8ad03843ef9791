package org.lowfirst.web.leaks;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.cylinder.CylinderChoice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.verdict.VerdictBadge;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A timed leak check: its beginning, its hold, or what came of it.
 *
 * @param place the bench
 * @param unit symbols of the units
 * @param limits what a check must keep to, in sentences, the source last
 * @param cylinders cylinders to choose from; empty once it has begun
 * @param hold the check under way; null before it begins
 * @param result what came of it; null before the second reading
 * @param form what was typed
 * @param key key of the form
 */
public record LeakCheckPage(
        Place place,
        UnitWords unit,
        List<String> limits,
        List<CylinderChoice> cylinders,
        @Nullable Hold hold,
        @Nullable Result result,
        Form form,
        String key)
        implements Page {

    public LeakCheckPage {
        limits = List.copyOf(limits);
        cylinders = List.copyOf(cylinders);
    }

    /** Symbols of units. */
    public record UnitWords(String pressure, String temperature) {}

    /**
     * @param cylinder name of the cylinder
     * @param action where the second reading is sent
     * @param read the first reading with its temperature and time
     * @param until when it may be read again
     * @param waiting how many minutes are left; empty when the time is up
     */
    public record Hold(String cylinder, String action, String read, String until, String waiting) {}

    /**
     * @param badge passed, failed, or no check
     * @param sentences the drop against its limit, and what spoils it
     * @param again the second reading with its temperature and time
     */
    public record Result(VerdictBadge badge, List<String> sentences, String again) {

        public Result {
            sentences = List.copyOf(sentences);
        }
    }

    @Override
    public String template() {
        return "leak-check";
    }

    @Override
    public String title(Words words) {
        return hold == null ? words.of("leak-check.title") : words.of("leak-check.title.of", hold.cylinder());
    }

    @Override
    public Section section() {
        return Section.BENCH;
    }

    @Override
    public Place at() {
        return place;
    }
}
